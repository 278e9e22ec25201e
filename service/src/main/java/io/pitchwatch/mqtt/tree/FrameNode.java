package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** The frame, as far as two sensors can tell: by how much it is twisted. */
public final class FrameNode implements CoachNode {

  static final Property TWIST = Property.number("twist", "Twist of the frame", Property.DEGREE, 2);

  private final Node node = new Node("frame", "Frame", List.of(TWIST));

  @Override
  public Node node() {
    return node;
  }

  @Override
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    double twistRad = report.installation().twistRad();
    return new Readings(node, report.floor().takenAtNanos())
        .put(TWIST, Value.of(Math.toDegrees(twistRad)))
        .list();
  }

  @Override
  public Optional<Guard> guard(Property property) {
    return Optional.of(FloorNode.KNOWN);
  }
}
