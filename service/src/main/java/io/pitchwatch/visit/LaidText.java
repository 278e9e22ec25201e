package io.pitchwatch.visit;

import io.pitchwatch.coach.Words;
import io.pitchwatch.levelling.Layer;
import io.pitchwatch.visit.Laid.Wheel;
import java.util.List;
import java.util.stream.Collectors;

/** What lies under the tyres, in words. */
public final class LaidText {

  private LaidText() {}

  /**
   * One line, such as "front right: 1 sheet, 1 block; rear right: 2 block"; from the ground up.
   *
   * @return empty when nothing lies there
   */
  public static String of(Laid laid) {
    return laid.wheels().stream().map(LaidText::of).collect(Collectors.joining("; "));
  }

  private static String of(Wheel wheel) {
    String place = wheel.axle() + " " + Words.of(wheel.side()) + ": ";
    String stair =
        wheel.stair().isEmpty()
            ? ""
            : ", with a stair of "
                + wheel.stair().stream().map(LaidText::of).collect(Collectors.joining(", then "));
    return place + of(wheel.layers()) + stair;
  }

  private static String of(List<Layer> layers) {
    return layers.stream()
        .map(layer -> layer.abreast() + " " + layer.piece())
        .collect(Collectors.joining(", "));
  }
}
