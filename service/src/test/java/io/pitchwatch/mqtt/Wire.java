package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.link.BrokerAddress;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;

/** The line between a client and a broker: it can be cut, be slow, or lead nowhere. */
public final class Wire implements AutoCloseable {

  private final BrokerAddress broker;
  private final ServerSocket door;
  private final List<Socket> sockets = new CopyOnWriteArrayList<>();
  private final AtomicInteger callers = new AtomicInteger();
  private volatile boolean slamming;
  private volatile long delayNanos;

  /** A line to the broker. */
  public Wire(BrokerAddress broker) {
    this.broker = broker;
    try {
      door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    spawn(this::serve);
  }

  /** The near end. */
  public BrokerAddress address() {
    return new BrokerAddress("127.0.0.1", door.getLocalPort(), false);
  }

  /** How many called so far. */
  public int callers() {
    return callers.get();
  }

  /** Whether callers find the door slammed as soon as they are in. */
  public void slam(boolean now) {
    slamming = now;
  }

  /** Every piece of data takes so much longer. */
  public void slow(long millis) {
    delayNanos = TimeUnit.MILLISECONDS.toNanos(millis);
  }

  /** Cuts all that is connected; new callers get through. */
  public void cut() {
    sockets.forEach(Wire::closeQuietly);
    sockets.clear();
  }

  @Override
  public void close() {
    closeQuietly(door);
    cut();
  }

  private void serve() {
    try {
      while (true) {
        Socket near = door.accept();
        callers.incrementAndGet();
        if (slamming) {
          near.close();
          continue;
        }
        Socket far = new Socket(InetAddress.getLoopbackAddress(), broker.port());
        sockets.add(near);
        sockets.add(far);
        spawn(() -> carry(near, far));
        spawn(() -> carry(far, near));
      }
    } catch (IOException e) {
      // Closed: the test is over. Or the broker is away: the caller sees a closed connection.
      if (!door.isClosed()) {
        spawn(this::serve);
      }
    }
  }

  private void carry(Socket from, Socket to) {
    byte[] piece = new byte[4096];
    try {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      for (int n = in.read(piece); n > 0; n = in.read(piece)) {
        if (delayNanos > 0) {
          LockSupport.parkNanos(delayNanos);
        }
        out.write(piece, 0, n);
      }
    } catch (IOException e) {
      // Cut.
    }
    closeQuietly(from);
    closeQuietly(to);
  }

  private static void spawn(Runnable work) {
    Thread thread = new Thread(work, "wire");
    thread.setDaemon(true);
    thread.start();
  }

  private static void closeQuietly(AutoCloseable each) {
    try {
      each.close();
    } catch (Exception e) {
      // It is closed enough.
    }
  }
}
