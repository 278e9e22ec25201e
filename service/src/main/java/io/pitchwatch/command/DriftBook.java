package io.pitchwatch.command;

import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.mqtt.LinkClock;
import io.pitchwatch.store.Kept;
import io.pitchwatch.visit.Watchkeeper;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Takes what the watches over the ground learn of each sensor's drift with temperature to where it
 * is taken away from what people see, and keeps it once an hour where there is news.
 */
final class DriftBook {

  private static final long KEEP_NANOS = 3_600_000_000_000L;

  private final List<SensorPost> posts;
  private final Watchkeeper keeper;
  private final Kept kept;
  private final LinkClock clock;
  private long keptNanos;

  DriftBook(List<SensorPost> posts, Watchkeeper keeper, Kept kept, LinkClock clock) {
    this.posts = List.copyOf(posts);
    this.keeper = keeper;
    this.kept = kept;
    this.clock = clock;
    this.keptNanos = clock.nanos().getAsLong();
  }

  /** After each round of the keeper. */
  void round(long nowNanos) {
    for (int i = 0; i < posts.size(); i++) {
      SensorPost post = posts.get(i);
      if (post.takeChange()) {
        keeper.know(i, post.drift().inFloor());
      } else if (keeper.minute().isPresent()) {
        post.drift().learn(keeper.drift(i));
      }
    }
    if (nowNanos - keptNanos >= KEEP_NANOS) {
      keptNanos = nowNanos;
      keep();
    }
  }

  /** Keeps what is known now. */
  void keep() {
    Instant now = clock.wall().apply(clock.nanos().getAsLong());
    String date = now.truncatedTo(ChronoUnit.SECONDS).toString();
    for (SensorPost post : posts) {
      TemperatureDrift drift = post.drift().inChip();
      boolean news = !kept.drift(post.id(), post.chip()).equals(Optional.of(drift));
      if (drift.isLearnt() && news) {
        kept.keepDrift(post.id(), post.chip(), drift, date);
      }
    }
  }
}
