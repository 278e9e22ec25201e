package io.pitchwatch.page;

/** Documents as interface.md shapes them. */
final class Plans {

  static final String HEADLINE = "Right side up: blocks under both right wheels";

  /** The same as the page breaks it into lines. */
  static final String HEADLINE_LINES = HEADLINE.replace(": ", ":\n");

  static final String LAID =
      """
      {"wheels":[
        {"axle":"rear","side":"right",
         "layers":[{"piece":"block","abreast":2},{"piece":"block","abreast":2}],
         "stair":[[{"piece":"block","abreast":2}]]}]}
      """;

  static final String BOOK =
      """
      {"site":"Alder Bend","visits":[
        {"begun":"2026-05-02T12:00:00Z","ended":"2026-05-09T12:00:00Z","stay":"stay",
         "surface":"grass","found":{"rollDeg":2.1,"pitchDeg":-0.8},
         "levelled":{"rollDeg":0.1,"pitchDeg":0},"settled":{"rollDeg":0.12,"pitchDeg":0},
         "laid":"rear right: 2 block"}]}
      """;

  static final String RIGHT_SIDE_UP =
      """
      {"lean":{"rollDeg":2.1,"pitchDeg":0.8},
       "wheels":[
         {"axle":"front","side":"right","liftMm":50,
          "layers":[{"piece":"grey-sheet","abreast":1},{"piece":"block","abreast":1}],"stair":[]},
         {"axle":"rear","side":"right","liftMm":76,
          "layers":[{"piece":"block","abreast":2},{"piece":"block","abreast":2}],
          "stair":[[{"piece":"block","abreast":2}]]}],
       "afterWheels":{"rollDeg":0.04,"pitchDeg":0.8},
       "jacks":[
         {"pair":"front","order":1,"raiseMm":94,"padMm":{"left":114,"right":190},
          "travelMm":{"left":140,"right":140},
          "pads":{"left":[{"pad":"timber-pad","count":1}],
            "right":[{"pad":"timber-pad","count":1},{"pad":"thin-pad","count":2}]}},
         {"pair":"rear","order":2,"raiseMm":12,"padMm":{"left":114,"right":228},
          "travelMm":{"left":140,"right":140}}],
       "afterJacks":{"rollDeg":0.04,"pitchDeg":0.0},
       "twistDeg":0.02,
       "pieces":[{"piece":"block","used":7,"of":10},{"piece":"grey-sheet","used":1,"of":4}],
       "verdict":"good","reasons":[],
       "alternatives":[{"without":"block","headline":"Right side up 48 mm: boards alone"}],
       "headline":"Right side up","cautions":[]}
      """;

  private Plans() {}
}
