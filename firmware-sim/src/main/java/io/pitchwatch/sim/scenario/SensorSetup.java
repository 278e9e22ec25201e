package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.chip.Chip;
import io.pitchwatch.sim.chip.Flaws;
import io.pitchwatch.sim.chip.Part;
import io.pitchwatch.sim.chip.Surroundings;
import io.pitchwatch.sim.world.CoachWorld;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * One sensor of a scenario.
 *
 * @param chip which kind
 * @param bus number of its bus
 * @param address on that bus
 * @param part how this piece differs from the ideal
 * @param place how and where it is screwed to the coach
 * @param tape what it plays instead of feeling the coach, if anything
 */
record SensorSetup(
    ChipKind chip, int bus, int address, Part part, Place place, Optional<Tape> tape) {

  /** A fresh chip that feels this coach. */
  Chip build(CoachWorld world, Flaws flaws, LongSupplier nowNanos, long seed) {
    return chip.build(part, surroundings(world), flaws, nowNanos, seed);
  }

  private Surroundings surroundings(CoachWorld world) {
    return tape.<Surroundings>map(t -> new Playback(t.recording(), t.loop(), t.stretch()))
        .orElseGet(() -> place.mounting().in(world, place.armM()));
  }

  /**
   * Where a sensor sits.
   *
   * @param mounting which way it points
   * @param armM how far above the axis about which the coach rocks, metres
   */
  record Place(Mounting mounting, double armM) {}

  /**
   * A recording and how it is played.
   *
   * @param recording the samples
   * @param loop whether it begins again at its end
   * @param stretch how many times longer it takes than it did
   */
  record Tape(Recording recording, boolean loop, double stretch) {}
}
