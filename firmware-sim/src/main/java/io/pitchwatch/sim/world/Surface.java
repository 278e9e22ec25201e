package io.pitchwatch.sim.world;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What the coach stands on. Figures are common practice for such ground, not any one site's. */
public enum Surface {
  CONCRETE(20e9),
  ASPHALT(300e6),
  GRAVEL(80e6),
  GRASS(20e6),
  SOFT(6e6);

  private static final double TYRE_PA = 700e3;

  private final double modulusPa;

  Surface(double modulusPa) {
    this.modulusPa = modulusPa;
  }

  /** Young's modulus of the ground, Pa. */
  public double modulusPa() {
    return modulusPa;
  }

  /** Its name in files. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** All names. */
  public static List<String> labels() {
    return Stream.of(values()).map(Surface::label).toList();
  }

  /** A surface by its name in files. */
  public static Surface labelled(String label) {
    return valueOf(label.toUpperCase(Locale.ROOT));
  }

  /**
   * Area on which tyres stand on the ground, square metres: load over a usual tyre pressure of 7
   * bar.
   *
   * @param loadKg on the wheel station, kilograms
   */
  public static double tyreContactM2(double loadKg) {
    return loadKg * Sway.G / TYRE_PA;
  }
}
