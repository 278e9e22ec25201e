package io.pitchwatch.config;

import io.pitchwatch.config.Config.Broker;
import java.net.InetAddress;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.UnknownHostException;
import java.util.Optional;

/** The rules for the addresses of the [mqtt] and [page] tables. No name is looked up. */
final class BrokerUrl {

  /** Where another broker is found. */
  static final Form MQTT =
      new Form(
          "mqtt://HOST[:PORT] or mqtts://HOST[:PORT], nothing more",
          text ->
              parse(text).filter(url -> isBare(url) && isOneOf(url, "mqtt", "mqtts")).isPresent());

  /** Where a page finds the broker's WebSocket; it may have a path. */
  static final Form WEBSOCKET =
      new Form(
          "ws://HOST[:PORT][/PATH] or wss://…, no user in it",
          text -> parse(text).filter(url -> isOneOf(url, "ws", "wss")).isPresent());

  private BrokerUrl() {}

  private static Optional<URI> parse(String text) {
    try {
      URI url = new URI(text);
      boolean good =
          url.getHost() != null
              && url.getUserInfo() == null
              && url.getPort() != 0
              && url.getPort() <= 65535
              && url.getFragment() == null;
      return good ? Optional.of(url) : Optional.empty();
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }

  private static boolean isOneOf(URI url, String plain, String secured) {
    return plain.equals(url.getScheme()) || secured.equals(url.getScheme());
  }

  private static boolean isBare(URI url) {
    return url.getQuery() == null && (url.getPath().isEmpty() || url.getPath().equals("/"));
  }

  /** The port, by its usual number where the address has none. */
  static int port(URI url) {
    if (url.getPort() > 0) {
      return url.getPort();
    }
    return "mqtts".equals(url.getScheme()) ? 8883 : 1883;
  }

  /** Why the built-in broker cannot listen at the address; empty when it can. */
  static Optional<String> refusal(URI url, Broker broker) {
    if (broker == Broker.OTHER) {
      return Optional.empty();
    }
    if (!"mqtt".equals(url.getScheme())) {
      return Optional.of("mqtt:// with broker = \"own\", which has no certificate");
    }
    return isHere(url.getHost())
        ? Optional.empty()
        : Optional.of(
            "an address of this machine with broker = \"own\": localhost, a loopback address,"
                + " 0.0.0.0, [::], or an address of a private network");
  }

  private static boolean isHere(String host) {
    if (host.equals("localhost")) {
      return true;
    }
    boolean literal = host.startsWith("[") || host.matches("\\d{1,3}(\\.\\d{1,3}){3}");
    if (!literal) {
      return false;
    }
    try {
      InetAddress address = InetAddress.getByName(host);
      boolean uniqueLocal =
          address.getAddress().length == 16 && (address.getAddress()[0] & 0xFE) == 0xFC;
      return address.isLoopbackAddress()
          || address.isAnyLocalAddress()
          || address.isSiteLocalAddress()
          || address.isLinkLocalAddress()
          || uniqueLocal;
    } catch (UnknownHostException e) {
      return false;
    }
  }
}
