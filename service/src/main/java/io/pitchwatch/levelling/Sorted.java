package io.pitchwatch.levelling;

/** Places in ascending values. */
final class Sorted {

  private Sorted() {}

  /** Index of the first that is no less. */
  static int from(double[] ascending, double least) {
    int low = 0;
    int high = ascending.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (ascending[middle] < least) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
