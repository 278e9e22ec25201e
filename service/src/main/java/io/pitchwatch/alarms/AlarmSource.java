package io.pitchwatch.alarms;

/** Where one alarm comes from: what it looks at and what it says. */
interface AlarmSource {

  /** How it behaves. */
  AlarmRule rule();

  /** How far beyond its limit; above 0 the condition holds; NaN when not known. */
  double excess(Situation situation);

  /** What it says to people. */
  AlarmText text(Situation situation);
}
