package io.pitchwatch.mqtt.link;

import java.net.URI;
import java.net.URISyntaxException;

/**
 * Where a broker listens.
 *
 * @param host name or address
 * @param port 1 to 65535
 * @param tls whether the connection is encrypted, and the host's name checked
 */
public record BrokerAddress(String host, int port, boolean tls) {

  private static final int PLAIN_PORT = 1883;
  private static final int TLS_PORT = 8883;
  private static final String ALLOWED =
      "; allowed are mqtt://host and mqtts://host, either with :port and nothing after it";

  /**
   * Reads an address of the form {@code mqtt://host:port} or {@code mqtts://host:port}.
   *
   * @throws IllegalArgumentException if it is of another form; credentials do not belong in it
   */
  public static BrokerAddress parse(String url) {
    URI uri;
    try {
      uri = new URI(url);
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException("url is \"" + url + "\"" + ALLOWED, e);
    }
    boolean tls = "mqtts".equals(uri.getScheme());
    boolean plain = "mqtt".equals(uri.getScheme());
    String path = uri.getRawPath();
    boolean bare =
        (path == null || path.isEmpty() || path.equals("/"))
            && uri.getRawQuery() == null
            && uri.getRawFragment() == null;
    if (uri.getRawUserInfo() != null) {
      throw new IllegalArgumentException("url holds a user or password" + ALLOWED);
    }
    if (!(tls || plain) || uri.getHost() == null || !bare || uri.getPort() > 65_535) {
      throw new IllegalArgumentException("url is \"" + url + "\"" + ALLOWED);
    }
    int port = uri.getPort() > 0 ? uri.getPort() : tls ? TLS_PORT : PLAIN_PORT;
    return new BrokerAddress(uri.getHost(), port, tls);
  }

  /** The same address as people write it. */
  @Override
  public String toString() {
    return (tls ? "mqtts://" : "mqtt://") + host + ":" + port;
  }
}
