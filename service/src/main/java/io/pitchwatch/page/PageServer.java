package io.pitchwatch.page;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * Serves the page and its files over HTTP, and nothing else: it holds no state of the coach. What
 * the page shows, it reads from the broker itself.
 */
public final class PageServer implements AutoCloseable {

  private static final int THREADS = 8;
  private static final int WAITING = 64;
  private static final int IDLE_THREAD_SECONDS = 20;
  private static final int BACKLOG = 32;

  private final HttpServer http;
  private final ExecutorService threads;

  private PageServer(HttpServer http, ExecutorService threads) {
    this.http = http;
    this.threads = threads;
  }

  /**
   * Opens the port and starts serving.
   *
   * @return {@link PageStart.Started}, or {@link PageStart.Refused} with the reason when the
   *     address is not this machine's, or the port is taken or not allowed
   */
  public static PageStart start(PageSettings settings) {
    limitSlowReaders();
    InetSocketAddress address = new InetSocketAddress(settings.bind(), settings.port());
    if (address.isUnresolved()) {
      return new PageStart.Refused(
          "The page is not served: bind \"" + settings.bind() + "\" is no known host or address.");
    }
    HttpServer http;
    try {
      http = HttpServer.create(address, BACKLOG);
    } catch (BindException e) {
      return new PageStart.Refused(bindReason(settings, e));
    } catch (IOException e) {
      return new PageStart.Refused(
          "The page is not served on " + place(settings) + ": " + e.getMessage() + ".");
    }
    ExecutorService threads = threads();
    http.createContext("/", new FileExchange(PageFiles.load(SettingsDocument.of(settings))));
    http.setExecutor(threads);
    http.start();
    return new PageStart.Started(new PageServer(http, threads));
  }

  /** Where the page is, with the port actually opened. */
  public URI address() {
    InetSocketAddress at = http.getAddress();
    String host = at.getAddress().getHostAddress();
    String bracketed = host.contains(":") ? "[" + host + "]" : host;
    return URI.create("http://" + bracketed + ":" + at.getPort() + "/");
  }

  /** Closes the port at once; requests under way are cut off. */
  @Override
  public void close() {
    http.stop(0);
    threads.shutdownNow();
  }

  /**
   * The platform's server waits for ever for a reader that sends half a request; it reads these two
   * settings once, in seconds, before its first instance. Whoever started the JVM may set others.
   */
  private static void limitSlowReaders() {
    if (System.getProperty("sun.net.httpserver.maxReqTime") == null) {
      System.setProperty("sun.net.httpserver.maxReqTime", "10");
    }
    if (System.getProperty("sun.net.httpserver.maxRspTime") == null) {
      System.setProperty("sun.net.httpserver.maxRspTime", "60");
    }
  }

  private static ExecutorService threads() {
    ThreadPoolExecutor pool =
        new ThreadPoolExecutor(
            THREADS,
            THREADS,
            IDLE_THREAD_SECONDS,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(WAITING),
            task -> {
              Thread thread = new Thread(task, "page");
              thread.setDaemon(true);
              return thread;
            });
    pool.allowCoreThreadTimeOut(true);
    return pool;
  }

  private static String bindReason(PageSettings settings, BindException e) {
    String message = String.valueOf(e.getMessage());
    String place = place(settings);
    if (message.contains("in use")) {
      return "The page is not served: another program already listens on "
          + place
          + ". Stop it, or choose another port for the page.";
    }
    if (message.contains("ermission")) {
      return "The page is not served: this account may not listen on "
          + place
          + ". Choose a port of 1024 or more.";
    }
    return "The page is not served: " + place + " cannot be opened (" + message + ").";
  }

  private static String place(PageSettings settings) {
    return settings.bind() + " port " + settings.port();
  }
}
