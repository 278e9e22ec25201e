package io.pitchwatch.mqtt.link;

import java.util.function.LongSupplier;
import org.eclipse.paho.mqttv5.client.MqttPingSender;
import org.eclipse.paho.mqttv5.client.internal.ClientComms;
import org.jspecify.annotations.Nullable;

/**
 * Remembers when Paho wants to look after the connection's silence; the link's own loop then calls
 * it. Paho's own timer runs on wall time, which on a small board jumps by years.
 */
final class LoopPing implements MqttPingSender {

  private static final long NEVER = Long.MAX_VALUE;
  private static final long NANOS_PER_MILLI = 1_000_000;

  private final LongSupplier nanos;
  private @Nullable ClientComms comms;
  private volatile boolean running;
  private volatile long dueNanos;

  LoopPing(LongSupplier nanos) {
    this.nanos = nanos;
  }

  @Override
  public void init(ClientComms newComms) {
    comms = newComms;
  }

  @Override
  public void start() {
    if (comms != null) {
      schedule(comms.getKeepAlive());
    }
  }

  @Override
  public void stop() {
    running = false;
  }

  @Override
  public void schedule(long delayMillis) {
    dueNanos = nanos.getAsLong() + delayMillis * NANOS_PER_MILLI;
    running = true;
  }

  /** Whether the silence is to be looked after now. */
  boolean isDue(long nowNanos) {
    return running && nowNanos - dueNanos >= 0;
  }

  /** Until then nothing is to be done, from now. */
  long remainingNanos(long nowNanos) {
    return running ? Math.max(0, dueNanos - nowNanos) : NEVER;
  }
}
