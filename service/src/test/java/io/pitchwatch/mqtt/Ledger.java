package io.pitchwatch.mqtt;

import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.mqtt.tree.Commands;
import io.pitchwatch.mqtt.tree.HistoryRequest;
import io.pitchwatch.visit.Care;
import io.pitchwatch.visit.Laid;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/** A service that writes down what it is asked. */
public final class Ledger implements Commands, LinkWatch {

  private final List<String> entries = new CopyOnWriteArrayList<>();

  /** What was written, in order. */
  public List<String> entries() {
    return entries;
  }

  /** How often exactly this was written. */
  public long count(String entry) {
    return entries.stream().filter(entry::equals).count();
  }

  /** Waits until this was written. */
  public void await(String entry) {
    Await.until("entry " + entry + " in " + entries, () -> entries.contains(entry));
  }

  @Override
  public void stay(Stay stay) {
    entries.add("stay " + stay);
  }

  @Override
  public void surface(Surface surface) {
    entries.add("surface " + surface);
  }

  @Override
  public void laid(Laid laid) {
    entries.add("laid " + laid.wheels().size());
  }

  @Override
  public void site(String name) {
    entries.add("site " + name);
  }

  @Override
  public void mark() {
    entries.add("mark");
  }

  @Override
  public void zero() {
    entries.add("zero");
  }

  @Override
  public void acknowledge(String alertId) {
    entries.add("acknowledge " + alertId);
  }

  @Override
  public void care(Care step, Optional<String> sensor) {
    entries.add("care " + step + sensor.map(id -> " of " + id).orElse(""));
  }

  @Override
  public void shelve(String alertId, double minutes) {
    entries.add("shelve " + alertId + " " + minutes);
  }

  @Override
  public void history(HistoryRequest request, Consumer<byte[]> answer) {
    entries.add("history " + request.hours());
    answer.accept("{}".getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public void ready() {
    entries.add("ready");
  }

  @Override
  public void away(String why) {
    entries.add("away: " + why);
  }

  @Override
  public void wornOut(String why) {
    entries.add("worn out: " + why);
  }
}
