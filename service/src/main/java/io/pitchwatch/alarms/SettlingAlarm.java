package io.pitchwatch.alarms;

import io.pitchwatch.coach.AngleText;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.settling.GroundReport.Trend;
import io.pitchwatch.settling.GroundWatch;
import io.pitchwatch.settling.HoursToLimit;

/** The ground gives way under the coach. */
final class SettlingAlarm implements AlarmSource {

  private static final AlarmRule RULE =
      new AlarmRule("settling", Priority.HIGH, Times.minutes(5), Times.minutes(60), 0, true, true);

  private final LeanWords words;

  SettlingAlarm(LeanWords words) {
    this.words = words;
  }

  @Override
  public AlarmRule rule() {
    return RULE;
  }

  @Override
  public double excess(Situation situation) {
    return situation.ground().settling() ? 1 : -1;
  }

  @Override
  public AlarmText text(Situation situation) {
    GroundReport ground = situation.ground();
    Trend roll = ground.roll();
    Trend pitch = ground.pitch();
    boolean byRoll = Math.abs(roll.sunkRad()) >= Math.abs(pitch.sunkRad());
    Trend more = byRoll ? roll : pitch;
    String where =
        byRoll
            ? "the " + LeanWords.side(roll.sunkRad()) + " side"
            : "the " + LeanWords.end(pitch.sunkRad());
    String sunk = byRoll ? words.roll(roll.sunkRad()) : words.pitch(pitch.sunkRad());
    String rate = AngleText.of(Math.abs(more.rateRadPerHour()), 2);
    return new AlarmText(
        "The ground is giving way under " + where,
        "It has sunk by " + sunk + " and goes on at " + rate + " an hour. " + ahead(ground),
        "Move to firmer ground, or raise that side on something wide, before it gets there.");
  }

  private static String ahead(GroundReport ground) {
    HoursToLimit limit = ground.toLimit();
    if (!limit.isForeseen() || Double.isInfinite(limit.hours())) {
      return "No limit is near.";
    }
    String what =
        limit.limit().equals(GroundWatch.TOLERANCE)
            ? "The end of what this stay allows"
            : "The limit of " + limit.limit();
    String soonest = Times.hours(limit.soonestHours());
    String interval =
        Double.isInfinite(limit.latestHours())
            ? soonest + " at the soonest"
            : soonest + " to " + Times.hours(limit.latestHours());
    return what + " is about " + Times.hours(limit.hours()) + " away (" + interval + ").";
  }
}
