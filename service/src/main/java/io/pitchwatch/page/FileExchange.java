package io.pitchwatch.page;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Answers GET and HEAD for the page's files; everything else is refused. */
final class FileExchange implements HttpHandler {

  private static final int NO_BODY = -1;

  /**
   * Scripts and styles from here only, none in the markup, no frames. WebSockets may go anywhere:
   * the reader may point the page at another broker.
   */
  private static final String CONTENT_SECURITY_POLICY =
      "default-src 'self'; connect-src 'self' ws: wss:; img-src 'self'; object-src 'none';"
          + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

  private static final String[][] ALWAYS = {
    {"Content-Security-Policy", CONTENT_SECURITY_POLICY},
    {"X-Content-Type-Options", "nosniff"},
    {"Referrer-Policy", "no-referrer"},
    {"Cross-Origin-Opener-Policy", "same-origin"},
    {"Cross-Origin-Resource-Policy", "same-origin"},
    {"Permissions-Policy", "camera=(), microphone=(), geolocation=()"},
    // The reader's copy is asked about each time: a mended page must not wait for a cache.
    {"Cache-Control", "no-cache"},
    {"Vary", "Accept-Encoding"},
  };

  private final Map<String, StaticFile> files;

  FileExchange(Map<String, StaticFile> files) {
    this.files = files;
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      for (String[] header : ALWAYS) {
        exchange.getResponseHeaders().set(header[0], header[1]);
      }
      String method = exchange.getRequestMethod();
      if (!method.equals("GET") && !method.equals("HEAD")) {
        exchange.getResponseHeaders().set("Allow", "GET, HEAD");
        refuse(exchange, 405, "Only GET and HEAD are answered here.\n");
        return;
      }
      StaticFile file = files.get(exchange.getRequestURI().getRawPath());
      if (file == null) {
        refuse(exchange, 404, "There is no such page here.\n");
      } else {
        send(exchange, file);
      }
    }
  }

  private static void send(HttpExchange exchange, StaticFile file) throws IOException {
    Headers asked = exchange.getRequestHeaders();
    boolean gzip = acceptsGzip(asked.getFirst("Accept-Encoding"));
    String tag = file.entityTag(gzip);
    exchange.getResponseHeaders().set("ETag", tag);
    if (matches(asked.getFirst("If-None-Match"), tag)) {
      exchange.sendResponseHeaders(304, NO_BODY);
      return;
    }
    exchange.getResponseHeaders().set("Content-Type", file.type());
    if (file.isCompressed(gzip)) {
      exchange.getResponseHeaders().set("Content-Encoding", "gzip");
    }
    sendBody(exchange, 200, file.body(gzip));
  }

  private static void refuse(HttpExchange exchange, int status, String text) throws IOException {
    exchange.getResponseHeaders().set("Content-Type", "text/plain; charset=utf-8");
    sendBody(exchange, status, text.getBytes(StandardCharsets.UTF_8));
  }

  private static void sendBody(HttpExchange exchange, int status, byte[] body) throws IOException {
    if (exchange.getRequestMethod().equals("HEAD")) {
      exchange.getResponseHeaders().set("Content-Length", Integer.toString(body.length));
      exchange.sendResponseHeaders(status, NO_BODY);
      return;
    }
    exchange.sendResponseHeaders(status, body.length);
    exchange.getResponseBody().write(body);
  }

  /** Whether gzip is named and not refused by a quality of nought (RFC 9110, section 12.5.3). */
  static boolean acceptsGzip(@Nullable String acceptEncoding) {
    if (acceptEncoding == null) {
      return false;
    }
    for (String part : acceptEncoding.split(",", -1)) {
      String[] coding = part.trim().split("\\s*;\\s*", 2);
      if (coding[0].equalsIgnoreCase("gzip")) {
        return coding.length == 1 || !coding[1].matches("(?i)q=0(\\.0{0,3})?");
      }
    }
    return false;
  }

  /** Whether the reader already holds this file (RFC 9110, section 13.1.2, weak comparison). */
  static boolean matches(@Nullable String ifNoneMatch, String tag) {
    if (ifNoneMatch == null) {
      return false;
    }
    for (String part : ifNoneMatch.split(",", -1)) {
      String held = part.trim();
      if (held.equals("*") || held.equals(tag) || held.equals("W/" + tag)) {
        return true;
      }
    }
    return false;
  }
}
