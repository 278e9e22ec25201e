package io.pitchwatch.alarms;

import io.pitchwatch.coach.Coach;
import java.util.ArrayList;
import java.util.List;

/** Which alarms a coach has. */
final class AlarmCatalogue {

  private AlarmCatalogue() {}

  static List<AlarmSource> of(Coach coach, List<String> sensorIds) {
    LeanWords words = new LeanWords(coach);
    List<AlarmSource> sources = new ArrayList<>();
    sources.add(new PiecesAlarm());
    for (int i = 0; i < coach.fridges().size(); i++) {
      sources.add(new FridgeAlarm(i, coach.fridges().get(i), words));
    }
    sources.add(new SettlingAlarm(words));
    for (int i = 0; i < sensorIds.size(); i++) {
      sources.add(SensorAlarm.lost(i, sensorIds.get(i)));
      sources.add(SensorAlarm.doubtful(i, sensorIds.get(i)));
    }
    if (sensorIds.size() > 1) {
      sources.add(new TwistAlarm(coach));
    }
    sources.add(new FloorAlarm(words));
    sources.add(new OldZeroAlarm());
    sources.add(new ZeroDoubtAlarm());
    return List.copyOf(sources);
  }
}
