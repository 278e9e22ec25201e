package io.pitchwatch.mqtt.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.mqtt.homie.Topic;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutboxTest {

  private final Outbox outbox = new Outbox(3);
  private final List<String> sent = new ArrayList<>();

  private static Publication value(String topic, String text) {
    return Publication.standing(new Topic(topic), Payload.of(text));
  }

  private static Publication event(String text) {
    return Publication.event(new Topic("log"), Payload.of(text));
  }

  private boolean send(Publication publication) {
    sent.add(publication.topic() + "=" + publication.payload().text().orElseThrow());
    return true;
  }

  @Test
  void keepsOnlyTheLatestOfEachTopicInTheOrderOfTheTopics() {
    outbox.put(value("a", "1"));
    outbox.put(value("b", "1"));
    outbox.put(value("a", "2"));
    outbox.pump(this::send);
    assertEquals(List.of("a=2", "b=1"), sent);
    assertTrue(outbox.isEmpty());
  }

  @Test
  void doesNotGrowWithTheLengthOfAnOutage() {
    for (int i = 0; i < 100_000; i++) {
      outbox.put(value("a", Integer.toString(i)));
      outbox.put(event(Integer.toString(i)));
    }
    outbox.pump(this::send);
    assertEquals(List.of("a=99999", "log=99997", "log=99998", "log=99999"), sent);
    assertEquals(99_997, outbox.droppedEvents());
  }

  @Test
  void keepsWhatIsNotTakenAndOffersItAgain() {
    outbox.put(value("a", "1"));
    outbox.put(value("b", "1"));
    outbox.pump(p -> p.topic().text().equals("a") && send(p));
    assertEquals(List.of("a=1"), sent);
    assertFalse(outbox.isEmpty());
    outbox.put(value("b", "2"));
    outbox.pump(this::send);
    assertEquals(List.of("a=1", "b=2"), sent);
  }

  @Test
  void putsTheLastWordBehindAllOthers() {
    outbox.put(value("state", "init"));
    outbox.put(value("a", "1"));
    outbox.putLast(value("state", "ready"));
    outbox.pump(this::send);
    assertEquals(List.of("a=1", "state=ready"), sent);
  }

  @Test
  void forgetsValuesButNotEvents() {
    outbox.put(value("a", "1"));
    outbox.put(event("x"));
    outbox.clearStanding();
    outbox.pump(this::send);
    assertEquals(List.of("log=x"), sent);
  }
}
