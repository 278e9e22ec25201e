package io.pitchwatch.levelling;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What height costs at the least, if pieces could be sawn as thin as one likes: each flight is full
 * and of the kind that costs least by height; the topmost counts once, the next one twice, and so
 * on. In the lowest flight there is at least one layer of a kind that may lie on the ground.
 */
final class Fill {

  private static final double ROUNDING_MM = 1e-6;

  private final double[] price;
  private final double fullMm;
  private final double perMm;
  private final double perFlight;
  private final @Nullable Kind cheapest;
  private final @Nullable Kind lowest;

  /**
   * Costs of a station.
   *
   * @param kinds usable there
   * @param price of a piece, by the kind's index
   * @param fullMm height of the tallest flight
   */
  Fill(List<Kind> kinds, double[] price, double fullMm) {
    this.price = price;
    this.fullMm = fullMm;
    double least = Double.POSITIVE_INFINITY;
    Kind found = null;
    for (Kind kind : kinds) {
      double mm = kind.thicknessNm() / Kind.NM_PER_MM;
      if (layer(kind) / mm < least) {
        least = layer(kind) / mm;
        found = kind;
      }
    }
    cheapest = found;
    perMm = found == null ? 0 : least;
    double extra = Double.POSITIVE_INFINITY;
    found = null;
    for (Kind kind : kinds) {
      double over = layer(kind) - perMm * kind.thicknessNm() / Kind.NM_PER_MM;
      if (kind.lowest() && over < extra) {
        extra = over;
        found = kind;
      }
    }
    lowest = found;
    perFlight = found == null ? 0 : Math.max(0, extra);
  }

  private double layer(Kind kind) {
    return price[kind.index()] * kind.abreast();
  }

  double spent(long[] use) {
    return Inventory.cost(use, price);
  }

  /** What follows at the least when so many flights lie above and so much height is missing. */
  double completion(int flights, double missingMm) {
    double cost = perFlight * (flights + 1);
    double left = missingMm;
    for (int times = flights + 1; left > 0; times++) {
      cost += perMm * times * Math.min(left, fullMm);
      left -= fullMm;
      if (left > ROUNDING_MM) {
        cost += perFlight;
      }
    }
    return cost;
  }

  /** The least that a stack costs that is at least so tall; adds what it would take, if asked. */
  double leastCost(double heightMm, double @Nullable [] taken) {
    return cost(material(heightMm), flights(heightMm), taken);
  }

  /**
   * The least that two stacks cost, the taller at least so tall and both together at least as tall
   * as the two heights.
   *
   * <p>Material grows faster than height, so it is least when they are as near to each other as may
   * be; flights are fewest when the taller takes all.
   *
   * @param lowerMm height of the lower one
   * @param upperMm height of the taller one
   * @param grounded whether there is at least one flight under each
   * @param taken what they take is added here, if asked
   */
  double leastCost(double lowerMm, double upperMm, boolean grounded, double @Nullable [] taken) {
    int flights = Math.max(flights(lowerMm + upperMm), flights(upperMm) + (grounded ? 1 : 0));
    return cost(material(lowerMm) + material(upperMm), flights, taken);
  }

  private int flights(double heightMm) {
    return heightMm <= ROUNDING_MM ? 0 : (int) Math.ceil((heightMm - ROUNDING_MM) / fullMm);
  }

  private double material(double heightMm) {
    double material = 0;
    double left = heightMm;
    for (int times = 1; left > ROUNDING_MM; times++) {
      material += times * Math.min(left, fullMm);
      left -= fullMm;
    }
    return material;
  }

  private double cost(double material, int flights, double @Nullable [] taken) {
    if (cheapest == null || lowest == null) {
      return 0;
    }
    if (taken != null) {
      double lowestMm = flights * lowest.thicknessNm() / Kind.NM_PER_MM;
      taken[lowest.index()] += (double) flights * lowest.abreast();
      taken[cheapest.index()] +=
          Math.max(0, material - lowestMm)
              * cheapest.abreast()
              / (cheapest.thicknessNm() / Kind.NM_PER_MM);
    }
    return perMm * material + perFlight * flights;
  }
}
