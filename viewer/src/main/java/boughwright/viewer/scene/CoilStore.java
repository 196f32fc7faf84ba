// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.plan.Coil;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Coils as they were drawn, to be drawn again where the wood under them did not move. */
final class CoilStore {
  /** Wire on wood that moved less than this stays where it was drawn [m]. */
  private static final double STILL = 2e-5;

  /** Beyond so many, coils of plans long gone are forgotten. */
  private static final int MOST = 400;

  private final Map<Key, Kept> kept = new HashMap<>();

  /** A coil, and how finely it is drawn. */
  record Key(Coil coil, Coils.Detail detail) {}

  /** A coil as it is drawn. */
  record Wound(List<Mesh> meshes, Mark.Wire mark) {}

  private record Kept(List<double[]> prints, Wound wound) {}

  void clear() {
    kept.clear();
  }

  /**
   * A coil as drawn before, or drawn anew.
   *
   * @param prints where the wood under it is
   */
  Wound get(Key key, List<double[]> prints, Supplier<Wound> draw) {
    Kept before = kept.get(key);
    if (before != null && isSame(before.prints(), prints)) {
      return before.wound();
    }
    if (kept.size() >= MOST) {
      kept.clear();
    }
    Wound wound = draw.get();
    kept.put(key, new Kept(prints, wound));
    return wound;
  }

  private static boolean isSame(List<double[]> one, List<double[]> other) {
    if (one.size() != other.size()) {
      return false;
    }
    for (int n = 0; n < one.size(); n++) {
      if (!isSame(one.get(n), other.get(n))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSame(double[] one, double[] other) {
    if (one == other || Arrays.equals(one, other)) {
      return true;
    }
    if (one.length != other.length) {
      return false;
    }
    for (int at = 0; at < one.length; at++) {
      boolean isPlace = at % Axis.NUMBERS < 3;
      if (isPlace && !(Math.abs(one[at] - other[at]) <= STILL)) {
        return false;
      }
    }
    return true;
  }
}
