package io.pitchwatch.settling;

/**
 * A straight line y = a + b x fitted by least squares, point by point, through running means so
 * that no large sums cancel.
 */
final class LinearFit {

  private int count;
  private double meanX;
  private double meanY;
  private double sumXx;
  private double sumXy;
  private double sumYy;

  void clear() {
    count = 0;
    meanX = 0;
    meanY = 0;
    sumXx = 0;
    sumXy = 0;
    sumYy = 0;
  }

  void add(double x, double y) {
    count++;
    double dx = x - meanX;
    double dy = y - meanY;
    meanX += dx / count;
    meanY += dy / count;
    sumXx += dx * (x - meanX);
    sumXy += dx * (y - meanY);
    sumYy += dy * (y - meanY);
  }

  int count() {
    return count;
  }

  /** NaN until two different x were added. */
  double slope() {
    return sumXy / sumXx;
  }

  double intercept() {
    return meanY - slope() * meanX;
  }

  /** Sum of the squared distances from the line. */
  double residualSum() {
    return Math.max(0, sumYy - sumXy * slope());
  }

  /** One standard error of the slope, of independent points; NaN below three of them. */
  double slopeError() {
    return Math.sqrt(residualSum() / (count - 2) / sumXx);
  }

  /** One standard error of the intercept, of independent points; NaN below three of them. */
  double interceptError() {
    return slopeError() * Math.sqrt(sumXx / count + meanX * meanX);
  }

  /** Share of the variance that the line explains. */
  double rSquared() {
    return 1 - residualSum() / sumYy;
  }
}
