package io.pitchwatch.sensing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class BackoffTest {

  @Test
  void waitsDoubleUpToTheLongestAndStartOverAfterASuccess() {
    Backoff backoff = new Backoff(20, 100);
    assertEquals(20, backoff.next());
    assertEquals(40, backoff.next());
    assertEquals(80, backoff.next());
    assertEquals(100, backoff.next());
    assertEquals(100, backoff.next());
    backoff.reset();
    assertEquals(20, backoff.next());
  }
}
