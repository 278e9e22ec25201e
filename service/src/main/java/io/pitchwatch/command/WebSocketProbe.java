package io.pitchwatch.command;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Knocks where browsers would knock: a broker may well speak MQTT and no WebSocket. */
final class WebSocketProbe {

  private static final Duration PATIENCE = Duration.ofSeconds(3);

  private WebSocketProbe() {}

  /**
   * Opens a WebSocket for MQTT (OASIS MQTT 5.0, section 6) and closes it.
   *
   * @return why it does not open; empty when it does
   */
  static Optional<String> knock(URI address) {
    try {
      WebSocket socket =
          HttpClient.newHttpClient()
              .newWebSocketBuilder()
              .subprotocols("mqtt")
              .connectTimeout(PATIENCE)
              .buildAsync(address, new WebSocket.Listener() {})
              .get(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
      socket.abort();
      return Optional.empty();
    } catch (ExecutionException e) {
      Throwable cause = e.getCause() == null ? e : e.getCause();
      String why = cause.getMessage();
      return Optional.of(why == null ? "nobody speaks WebSocket there" : why);
    } catch (TimeoutException e) {
      return Optional.of("no answer within " + PATIENCE.toSeconds() + " s");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of("interrupted");
    }
  }
}
