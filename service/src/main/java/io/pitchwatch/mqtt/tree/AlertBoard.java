package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.visit.Report.AlertReport;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** The alerts that stand under {@code $alert} (Homie 5.0, "Alert topic"). */
public final class AlertBoard {

  private final DeviceTopics topics;
  private final Map<String, String> texts = new LinkedHashMap<>();

  /** No alert stands. */
  public AlertBoard(DeviceTopics topics) {
    this.topics = topics;
  }

  /**
   * Puts up what is new or says something else, takes down what is over.
   *
   * @param alerts all that stand
   * @param out takes what is to be published
   */
  public void show(List<AlertReport> alerts, Consumer<Publication> out) {
    Map<String, String> standing = new LinkedHashMap<>();
    for (AlertReport alert : alerts) {
      standing.put(alert.id(), alert.text());
      if (!alert.text().equals(texts.get(alert.id()))) {
        out.accept(publication(alert.id(), alert.text()));
      }
    }
    for (String id : texts.keySet()) {
      if (!standing.containsKey(id)) {
        out.accept(Publication.removal(topics.alert(id)));
      }
    }
    texts.clear();
    texts.putAll(standing);
  }

  /** All that stand. */
  public List<Publication> all() {
    List<Publication> all = new ArrayList<>();
    texts.forEach((id, text) -> all.add(publication(id, text)));
    return all;
  }

  private Publication publication(String id, String text) {
    return Publication.standing(topics.alert(id), Payload.of(text));
  }
}
