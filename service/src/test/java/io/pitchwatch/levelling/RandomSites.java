package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Levelling;
import io.pitchwatch.coach.Pad;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.coach.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random coaches, inventories, leans, surfaces and stays; the same seed gives the same site. */
final class RandomSites {

  private static final double[] INCHES = {0.5, 0.75, 1, 1.5, 2, 2.5, 3.5};

  private final SplittableRandom random;
  private final int mostKinds;
  private final int mostPieces;

  RandomSites(long seed, int mostKinds, int mostPieces) {
    this.random = new SplittableRandom(seed);
    this.mostKinds = mostKinds;
    this.mostPieces = mostPieces;
  }

  /** Two axles or three, with jacks or without. */
  Site next() {
    return next(2 + random.nextInt(2), random.nextBoolean());
  }

  Site next(int axleCount, boolean jacks) {
    Coach coach =
        new Coach(
            "heron",
            Units.METRIC,
            axles(axleCount),
            jacks ? jacks() : List.of(),
            pieces(),
            List.of(new Pad("timber-pad", 20 + random.nextInt(100), 300, 300, random.nextInt(9))),
            levelling(),
            List.of(),
            List.of());
    return new Site(
        coach, Lean.ofDegrees(gauss(1.6), gauss(1.2)), any(Surface.values()), any(Stay.values()));
  }

  private <T> T any(T[] values) {
    return List.of(values).get(random.nextInt(values.length));
  }

  private double gauss(double deg) {
    double sum = -6;
    for (int i = 0; i < 12; i++) {
      sum += random.nextDouble();
    }
    return Math.rint(sum * deg * 100) / 100;
  }

  private List<Axle> axles(int count) {
    List<Axle> axles = new ArrayList<>();
    double xMm = 0;
    for (int k = 0; k < count; k++) {
      boolean twin = k == 1;
      axles.add(
          new Axle(
              "axle-" + k,
              xMm,
              1700 + random.nextInt(400),
              2500 + random.nextInt(5000),
              60 + random.nextInt(60),
              twin ? 500 + random.nextInt(120) : 200 + random.nextInt(80),
              0.5 + random.nextDouble(),
              twin,
              k > 0));
      xMm -= k == 0 ? 3500 + random.nextInt(3500) : 1100 + random.nextInt(400);
    }
    return axles;
  }

  private List<JackPair> jacks() {
    return List.of(
        new JackPair("front", -600 - random.nextInt(600), 1500, 330, 400, 150, 5000, 230),
        new JackPair("rear", -4200 - random.nextInt(2500), 1400, 330, 400, 150, 6000, 230));
  }

  private List<Piece> pieces() {
    int kinds = 1 + random.nextInt(mostKinds);
    int left = mostPieces;
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < kinds; i++) {
      PieceKind kind = any(PieceKind.values());
      int count = Math.min(left, 1 + random.nextInt(Math.max(1, 2 * mostPieces / kinds)));
      left -= count;
      pieces.add(
          new Piece(
              "kind-" + i,
              kind,
              thicknessMm(kind),
              300 + random.nextInt(400),
              kind == PieceKind.BLOCK ? 180 + random.nextInt(200) : 250 + random.nextInt(400),
              count,
              random.nextInt(8) == 0 ? 1500 : 4500));
    }
    return pieces;
  }

  private double thicknessMm(PieceKind kind) {
    double mm =
        random.nextBoolean()
            ? 25.4 * INCHES[random.nextInt(INCHES.length)]
            : 18 + random.nextInt(50);
    return kind == PieceKind.SHEET ? 4 + random.nextInt(18) : mm;
  }

  private Levelling levelling() {
    return new Levelling(
        30 + random.nextInt(40),
        100 + random.nextInt(120),
        Math.toRadians(0.2 + 0.4 * random.nextDouble()),
        12,
        Math.toRadians(1.5),
        Math.toRadians(0.5),
        Math.toRadians(0.25));
  }
}
