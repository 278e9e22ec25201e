package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.mqtt.link.Outbox;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Says what happens, in the process's log and under {@code $log}; strangers cannot flood either.
 */
final class LinkLog {

  private static final Logger LOG = LoggerFactory.getLogger(CoachLink.class);

  private final DeviceTopics topics;
  private final Outbox outbox;
  private final RateLimit complaints = new RateLimit();

  LinkLog(DeviceTopics topics, Outbox outbox) {
    this.topics = topics;
    this.outbox = outbox;
  }

  /** Says it, whatever else was said. */
  void say(LogLevel level, String text) {
    local(level, text);
    outbox.put(Publication.event(topics.log(level), Payload.of(text)));
  }

  /** Says what a stranger did wrong, now and then. */
  void complain(String text, long nowNanos) {
    if (complaints.passes(nowNanos)) {
      long unsaid = complaints.takeSuppressed();
      say(LogLevel.WARN, unsaid == 0 ? text : text + " (and " + unsaid + " more before)");
    }
  }

  /** Says it in the process's log only. */
  static void local(LogLevel level, String text) {
    switch (level) {
      case DEBUG -> LOG.debug("{}", text);
      case INFO -> LOG.info("{}", text);
      case WARN -> LOG.warn("{}", text);
      case ERROR, FATAL -> LOG.error("{}", text);
    }
  }
}
