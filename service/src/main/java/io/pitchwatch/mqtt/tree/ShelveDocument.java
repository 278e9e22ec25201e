package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Ids;
import java.util.Set;

/**
 * The command to keep an alert quiet: {@code {"alert": "fridge-galley", "minutes": 60}}.
 *
 * @param alert which one
 * @param minutes for how long from now, 0 to a week; 0 ends it
 */
record ShelveDocument(String alert, double minutes) {

  private static final double WEEK_MINUTES = 7 * 24 * 60;

  static ShelveDocument parse(String payload) throws MalformedException {
    Fields fields = new Fields("shelve", StrictJson.object(payload));
    fields.only(Set.of("alert", "minutes"));
    String alert = fields.text("alert");
    if (!Ids.isWellFormed(alert)) {
      throw fields.missing("alert", "the id of an alert");
    }
    return new ShelveDocument(alert, fields.number("minutes", 0, WEEK_MINUTES));
  }
}
