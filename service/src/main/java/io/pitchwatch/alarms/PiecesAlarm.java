package io.pitchwatch.alarms;

/** The coach moved off while pieces were said to lie under its tyres. */
final class PiecesAlarm implements AlarmSource {

  private static final AlarmRule RULE =
      new AlarmRule("pieces-left", Priority.URGENT, 0, 0, 0, true, false);

  @Override
  public AlarmRule rule() {
    return RULE;
  }

  @Override
  public double excess(Situation situation) {
    return situation.underWay() && situation.piecesLaid() > 0 ? situation.piecesLaid() : -1;
  }

  @Override
  public AlarmText text(Situation situation) {
    int pieces = situation.piecesLaid();
    if (pieces == 0) {
      return new AlarmText(
          "The coach moved with pieces still laid under its tyres",
          "All of them are said to be collected since.",
          "Count them; then say that you have seen this.");
    }
    return new AlarmText(
        "The coach moves with pieces still laid under its tyres",
        pieces == 1
            ? "1 piece has not been collected."
            : pieces + " pieces have not been collected.",
        "Stop where it is safe, and fetch and count them; then say that nothing is laid.");
  }
}
