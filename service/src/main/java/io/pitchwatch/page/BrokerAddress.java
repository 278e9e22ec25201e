package io.pitchwatch.page;

import java.net.URI;

/** Where the page finds the MQTT broker, over WebSocket. */
public sealed interface BrokerAddress {

  /**
   * On the host that the page itself was loaded from, by whatever name or address the reader used.
   *
   * @param port the broker's WebSocket port, 1 to 65535
   * @param path path of the WebSocket, starting with a slash
   */
  record SameHost(int port, String path) implements BrokerAddress {

    /** Checks both. */
    public SameHost {
      if (port < 1 || port > 65535) {
        throw new IllegalArgumentException("port is " + port + "; it must be 1 to 65535");
      }
      if (!path.startsWith("/")) {
        throw new IllegalArgumentException("path is \"" + path + "\"; it must start with /");
      }
    }

    /** The path most brokers expect. */
    public SameHost(int port) {
      this(port, "/mqtt");
    }
  }

  /**
   * Anywhere else.
   *
   * @param uri a ws or wss address, without credentials
   */
  record At(URI uri) implements BrokerAddress {

    /** Checks the scheme, and that no password would be shown to every reader of the page. */
    public At {
      if (!"ws".equals(uri.getScheme()) && !"wss".equals(uri.getScheme())) {
        throw new IllegalArgumentException("uri is " + uri + "; it must be ws:// or wss://");
      }
      if (uri.getRawUserInfo() != null) {
        throw new IllegalArgumentException("uri holds credentials; it must not");
      }
    }
  }
}
