package io.pitchwatch.mqtt.broker;

import java.util.List;
import org.apache.activemq.artemis.api.core.Message;
import org.apache.activemq.artemis.core.server.ServerSession;
import org.apache.activemq.artemis.core.server.plugin.ActiveMQServerPlugin;
import org.apache.activemq.artemis.core.transaction.Transaction;

/** Takes from messages that need not outlive the process the mark that they do. */
final class ArtemisKeeping implements ActiveMQServerPlugin {

  private final Keeping keeping;

  ArtemisKeeping(Keeping keeping) {
    this.keeping = keeping;
  }

  @Override
  public void beforeSend(
      ServerSession session,
      Transaction transaction,
      Message message,
      boolean direct,
      boolean noAutoCreateQueue) {
    if (message.isDurable() && !keeping.outlives(levels(message.getAddress()))) {
      message.setDurable(false);
    }
  }

  /** Artemis separates the levels of an address by dots. */
  static List<String> levels(String address) {
    return List.of(address.split("\\.", -1));
  }
}
