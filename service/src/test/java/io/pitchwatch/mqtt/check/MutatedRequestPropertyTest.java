package io.pitchwatch.mqtt.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import io.pitchwatch.mqtt.Ledger;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.tree.Ruling;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Mutations of a request for the history are looked up or refused with words, never thrown, and no
 * answer goes anywhere but below its own topic. 2,000 of them, or 100,000 with {@code
 * -Dpitchwatch.full=true}; another start with {@code -Dpitchwatch.seed=N}.
 */
class MutatedRequestPropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 20_261_126L);
  private static final int CASES = Boolean.getBoolean("pitchwatch.full") ? 100_000 : 2_000;
  private static final String ANSWERS = "homie/5/heron/upkeep/history/answer/";
  private static final byte[] SAMPLE =
      "{\"step\": \"hour\", \"hours\": 48.5, \"reply\": \"page-1\"}"
          .getBytes(StandardCharsets.UTF_8);
  private static final String[] SHARDS = {
    "\"",
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "1e999",
    "-1",
    "NaN",
    "null",
    "true",
    "\0",
    "\u00ff",
    "/",
    "+",
    "#",
    "\"from\"",
    "\"2026-06-01T12:00:00Z\"",
    "\"to\"",
    "\"+1000000000-01-01T00:00:00Z\"",
  };

  @Test
  void aMutatedRequestIsLookedUpOrRefused() {
    int accepted = 0;
    for (int i = 0; i < CASES; i++) {
      SplittableRandom random = new SplittableRandom(SEED + i);
      List<Publication> answers = new ArrayList<>();
      HistoryDesk desk =
          new HistoryDesk(new DeviceTopics("homie", "heron"), List.of(), new Ledger(), () -> {});
      byte[] bytes = mutated(random);
      Ruling ruling = take(desk, bytes, SEED + i);
      desk.answer(answers::add);
      if (ruling instanceof Ruling.Refused refused) {
        long seed = SEED + i;
        assertTrue(!refused.why().isBlank() && refused.why().length() < 500, () -> "seed " + seed);
        assertEquals(List.of(), answers, () -> "seed " + seed);
      } else {
        accepted++;
        String topic = answers.get(0).topic().text();
        long seed = SEED + i;
        assertTrue(
            topic.startsWith(ANSWERS) && topic.indexOf('/', ANSWERS.length()) < 0,
            () -> "seed " + seed + ": " + topic);
      }
    }
    // Both ways must be walked, or the mutations are too mild or too wild.
    assertTrue(accepted > CASES / 100 && accepted < CASES / 2, accepted + " of " + CASES);
  }

  private static Ruling take(HistoryDesk desk, byte[] bytes, long seed) {
    try {
      return desk.take(
          new Arrival(
              "homie/5/heron/upkeep/history/set",
              Payload.of(bytes),
              bytes.length,
              false,
              Optional.empty(),
              Optional.empty(),
              0));
    } catch (RuntimeException | Error e) {
      return fail("seed " + seed + ": " + new String(bytes, StandardCharsets.UTF_8), e);
    }
  }

  private static byte[] mutated(SplittableRandom random) {
    byte[] bytes = SAMPLE.clone();
    for (int times = 1 + random.nextInt(3); times > 0; times--) {
      int at = random.nextInt(bytes.length);
      if (random.nextBoolean()) {
        bytes[at] = (byte) random.nextInt(256);
      } else {
        byte[] shard = SHARDS[random.nextInt(SHARDS.length)].getBytes(StandardCharsets.UTF_8);
        byte[] longer = new byte[bytes.length + shard.length];
        System.arraycopy(bytes, 0, longer, 0, at);
        System.arraycopy(shard, 0, longer, at, shard.length);
        System.arraycopy(bytes, at, longer, at + shard.length, bytes.length - at);
        bytes = longer;
      }
    }
    return bytes;
  }
}
