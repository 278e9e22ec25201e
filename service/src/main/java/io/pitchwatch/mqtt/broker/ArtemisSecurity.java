package io.pitchwatch.mqtt.broker;

import io.pitchwatch.mqtt.CoachLink;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.security.auth.Subject;
import org.apache.activemq.artemis.core.security.CheckType;
import org.apache.activemq.artemis.core.security.Role;
import org.apache.activemq.artemis.spi.core.protocol.RemotingConnection;
import org.apache.activemq.artemis.spi.core.security.ActiveMQSecurityManager5;
import org.apache.activemq.artemis.spi.core.security.jaas.UserPrincipal;
import org.jspecify.annotations.Nullable;

/** Puts our accounts and rights where Artemis asks for them. */
final class ArtemisSecurity implements ActiveMQSecurityManager5 {

  private final List<Account> accounts;
  private final Rights rights;

  ArtemisSecurity(List<Account> accounts, Rights rights) {
    this.accounts = List.copyOf(accounts);
    this.rights = rights;
  }

  @Override
  public @Nullable Subject authenticate(
      @Nullable String user,
      @Nullable String password,
      RemotingConnection connection,
      @Nullable String domain) {
    if (user == null || password == null) {
      return null;
    }
    return accounts.stream()
        .filter(account -> account.matches(user, password))
        .filter(account -> mayBe(account, connection.getClientID()))
        .findFirst()
        .map(account -> new UserPrincipal(account.user()))
        .map(principal -> new Subject(true, Set.of(principal), Set.of(), Set.of()))
        .orElse(null);
  }

  /** Nobody but the daemon takes the daemon's place. */
  private static boolean mayBe(Account account, @Nullable String clientId) {
    return account.kind() == Account.Kind.DAEMON
        || clientId == null
        || !clientId.startsWith(CoachLink.CLIENT_ID_PREFIX);
  }

  @Override
  public boolean authorize(
      Subject subject, Set<Role> roles, CheckType type, @Nullable String address) {
    if (type == CheckType.MANAGE || address == null) {
      return false;
    }
    Optional<Account.Kind> kind = kind(subject);
    return kind.isPresent()
        && (type != CheckType.SEND || rights.mayPublish(kind.get(), levels(address)));
  }

  /** Artemis separates the levels of an address by dots. */
  private static List<String> levels(String address) {
    return List.of(address.split("\\.", -1));
  }

  private Optional<Account.Kind> kind(Subject subject) {
    return subject.getPrincipals(UserPrincipal.class).stream()
        .flatMap(p -> accounts.stream().filter(a -> a.user().equals(p.getName())))
        .map(Account::kind)
        .findFirst();
  }

  /** Not asked by a server that knows {@link ActiveMQSecurityManager5}. */
  @Override
  public boolean validateUser(String user, String password) {
    return false;
  }

  /** Not asked by a server that knows {@link ActiveMQSecurityManager5}. */
  @Override
  public boolean validateUserAndRole(
      String user, String password, Set<Role> roles, CheckType type) {
    return false;
  }
}
