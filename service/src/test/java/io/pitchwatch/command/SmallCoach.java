package io.pitchwatch.command;

/** The config of a coach with one axle: the least there is to say of one, and its droop. */
final class SmallCoach {

  static final String TOML =
      """
      [coach]
      id = "heron"
      [[axle]]
      id = "front"
      position = "0 mm"
      track = "1960 mm"
      load = "3600 kg"
      droop = "90 mm"
      footprint = "245 mm"
      """;

  private SmallCoach() {}
}
