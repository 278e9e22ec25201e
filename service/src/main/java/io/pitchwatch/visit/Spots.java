package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.LeanText;
import io.pitchwatch.attitude.UpVector;
import java.util.ArrayList;
import java.util.List;

/** The spots that a driver tried at one site, to compare them. Bounded; not thread-safe. */
public final class Spots {

  /** More spots than anybody tries at one site. */
  static final int MOST = 20;

  private final List<Lean> leans = new ArrayList<>();

  /** Forgets all, as when the coach drove on to another site. */
  public void clear() {
    leans.clear();
  }

  /**
   * Remembers a spot, and says how it compares: the best is the one that leans least in all.
   *
   * @param lean the floor's lean there, radians, not NaN
   * @return one line for people
   */
  public String mark(Lean lean) {
    if (leans.size() == MOST) {
      leans.remove(0);
    }
    leans.add(lean);
    int best = 0;
    for (int i = 1; i < leans.size(); i++) {
      if (totalRad(i) < totalRad(best)) {
        best = i;
      }
    }
    String here = "spot " + leans.size() + ": " + LeanText.of(lean);
    if (leans.size() == 1) {
      return here;
    }
    return best == leans.size() - 1
        ? here + "; the best so far"
        : here + "; spot " + (best + 1) + " is better: " + LeanText.of(leans.get(best));
  }

  private double totalRad(int i) {
    return UpVector.of(leans.get(i)).totalRad();
  }
}
