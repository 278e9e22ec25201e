package io.pitchwatch.attitude;

import java.util.ArrayList;
import java.util.List;

/**
 * A way in which a chip can be held: which of its arrows point up, which down. The six faces of a
 * cube have one such arrow, its twelve edges two, its eight corners three.
 *
 * @param x 1 if its x arrow points up, −1 down, 0 if it lies level
 * @param y likewise
 * @param z likewise
 */
public record Facing(int x, int y, int z) {

  /** All 26: faces first, then edges, then corners. */
  public static final List<Facing> ALL = all();

  private static List<Facing> all() {
    List<Facing> all = new ArrayList<>();
    for (int arrows = 1; arrows <= 3; arrows++) {
      for (int code = 0; code < 27; code++) {
        Facing facing = new Facing(1 - code / 9, 1 - code / 3 % 3, 1 - code % 3);
        if (facing.arrows() == arrows) {
          all.add(facing);
        }
      }
    }
    return List.copyOf(all);
  }

  /** How many of its arrows do not lie level: 1 to 3. */
  public int arrows() {
    return Math.abs(x) + Math.abs(y) + Math.abs(z);
  }

  /** Angle from this way to a direction in the chip's axes, radians, 0 to π. */
  public double angleRad(UpVector up) {
    double cosine = (x * up.x() + y * up.y() + z * up.z()) / Math.sqrt(arrows());
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  /** In words: "the x arrow up", "the x arrow up and the z arrow down, both slanting alike". */
  public String words() {
    List<String> words = new ArrayList<>();
    say(words, "x", x);
    say(words, "y", y);
    say(words, "z", z);
    String said = String.join(" and ", words);
    return switch (arrows()) {
      case 1 -> said;
      case 2 -> said + ", both slanting alike";
      default -> said + ", all slanting alike";
    };
  }

  private static void say(List<String> words, String axis, int sign) {
    if (sign != 0) {
      words.add("the " + axis + " arrow " + (sign > 0 ? "up" : "down"));
    }
  }
}
