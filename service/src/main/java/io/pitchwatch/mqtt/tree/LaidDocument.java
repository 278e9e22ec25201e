package io.pitchwatch.mqtt.tree;

import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.Words;
import io.pitchwatch.levelling.Layer;
import io.pitchwatch.visit.Laid;
import io.pitchwatch.visit.Laid.Wheel;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What lies under the tyres, as JSON: {@code {"wheels": [{"axle": "rear", "side": "right",
 * "layers": [{"piece": "block", "abreast": 2}], "stair": []}]}}, layers from the ground up. The
 * wheels have the shape they have in a plan.
 */
final class LaidDocument {

  private static final int MOST_LAYERS = 100;

  private final Coach coach;
  private final Map<String, Integer> used = new HashMap<>();
  private final Set<String> stations = new HashSet<>();

  private LaidDocument(Coach coach) {
    this.coach = coach;
  }

  /**
   * Reads the document.
   *
   * @throws MalformedException if it is none, names an axle or piece the coach has not, a station
   *     twice, or more pieces than are on board
   */
  static Laid parse(String payload, Coach coach) throws MalformedException {
    return new LaidDocument(coach).laid(new Fields("laid", StrictJson.object(payload)));
  }

  private Laid laid(Fields fields) throws MalformedException {
    fields.only(Set.of("wheels"));
    List<Wheel> wheels = new ArrayList<>();
    for (Object element : fields.list("wheels")) {
      wheels.add(wheel(Fields.of("wheels[" + wheels.size() + "]", element)));
    }
    for (Piece piece : coach.pieces()) {
      int count = used.getOrDefault(piece.id(), 0);
      if (count > piece.count()) {
        throw new MalformedException(
            "laid has " + count + " of " + piece.id() + "; on board are " + piece.count());
      }
    }
    return new Laid(wheels);
  }

  private Wheel wheel(Fields fields) throws MalformedException {
    fields.only(Set.of("axle", "side", "layers", "stair"));
    String axle = fields.text("axle");
    if (coach.axle(axle).isEmpty()) {
      List<String> known = coach.axles().stream().map(Axle::id).toList();
      throw fields.missing("axle", "one of " + String.join(", ", known));
    }
    String word = fields.text("side");
    if (!word.equals("left") && !word.equals("right")) {
      throw fields.missing("side", "left or right");
    }
    if (!stations.add(axle + " " + word)) {
      throw new MalformedException(fields.where() + " is a second " + word + " wheel of " + axle);
    }
    Direction side = word.equals("left") ? Direction.LEFT : Direction.RIGHT;
    List<Layer> layers = layers(fields.where() + ".layers", fields.list("layers"));
    return new Wheel(axle, side, layers, stair(fields));
  }

  private List<List<Layer>> stair(Fields fields) throws MalformedException {
    List<List<Layer>> stair = new ArrayList<>();
    if (fields.has("stair")) {
      for (Object step : atMost(MOST_LAYERS, fields.where() + ".stair", fields.list("stair"))) {
        stair.add(layers(fields.where() + ".stair[" + stair.size() + "]", step));
      }
    }
    return stair;
  }

  private List<Layer> layers(String where, Object value) throws MalformedException {
    List<?> elements = atMost(MOST_LAYERS, where, value);
    List<Layer> layers = new ArrayList<>();
    for (Object element : elements) {
      layers.add(layer(Fields.of(where + "[" + layers.size() + "]", element)));
    }
    return layers;
  }

  private static List<?> atMost(int most, String where, Object value) throws MalformedException {
    if (value instanceof List<?> elements && elements.size() <= most) {
      return elements;
    }
    throw new MalformedException(where + " must be a list of at most " + most);
  }

  private Layer layer(Fields fields) throws MalformedException {
    fields.only(Set.of("piece", "abreast"));
    String id = fields.text("piece");
    for (Piece piece : coach.pieces()) {
      if (piece.id().equals(id)) {
        double abreast = fields.number("abreast", 1, Math.max(1, piece.count()));
        if (abreast != Math.rint(abreast)) {
          throw fields.missing("abreast", "a whole number");
        }
        used.merge(id, (int) abreast, Integer::sum);
        return new Layer(id, (int) abreast);
      }
    }
    List<String> known = coach.pieces().stream().map(Piece::id).toList();
    throw fields.missing(
        "piece", known.isEmpty() ? "carried; none is" : "one of " + String.join(", ", known));
  }

  /** The document. */
  static String write(Laid laid) {
    return Json.object(json -> Json.array(json, "wheels", laid.wheels(), LaidDocument::write));
  }

  private static void write(JsonGenerator json, Wheel wheel) throws IOException {
    json.writeStringField("axle", wheel.axle());
    json.writeStringField("side", Words.of(wheel.side()));
    Json.stack(json, wheel.layers(), wheel.stair());
  }
}
