package io.pitchwatch.command;

/**
 * What came of one step of looking after a sensor.
 *
 * @param done whether it was carried out; otherwise nothing was changed
 * @param said what happened or why not, for people, without its full stop
 */
record CareStep(boolean done, String said) {

  static CareStep done(String said) {
    return new CareStep(true, said);
  }

  static CareStep refused(String why) {
    return new CareStep(false, why);
  }
}
