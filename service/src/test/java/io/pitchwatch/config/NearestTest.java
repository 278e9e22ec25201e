package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {

  @Test
  void editsAreCountedAsLevenshteinDoes() {
    // The usual textbook pair: two replacements and an insertion.
    assertEquals(3, Nearest.distance("kitten", "sitting"));
    assertEquals(0, Nearest.distance("track", "track"));
    assertEquals(5, Nearest.distance("", "track"));
    assertEquals(1, Nearest.distance("trak", "track"));
  }

  @Test
  void theNearestWordIsNamed() {
    List<String> known = List.of("position", "track", "load", "droop");
    assertEquals(Optional.of("track"), Nearest.to("trak", known));
    assertEquals(Optional.of("droop"), Nearest.to("drop", known));
  }

  @Test
  void aWordLikeNoneIsLikeNone() {
    assertEquals(Optional.empty(), Nearest.to("zzzzzz", List.of("position", "load")));
    assertEquals(Optional.empty(), Nearest.to("x".repeat(65), List.of("x".repeat(64))));
  }
}
