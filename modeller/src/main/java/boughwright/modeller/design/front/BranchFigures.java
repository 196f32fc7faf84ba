// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.front.Parts.Role;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.sight.Ellipsoid;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.List;
import java.util.stream.IntStream;

/** The branches and pads of foliage, as plain numbers for loops over many poses. Immutable. */
final class BranchFigures {
  /** Half width of the change from before the trunk to behind it, in sizes of the tree. Choice. */
  private static final double SOFT_DEPTH = 0.02;

  /** Moments of branches below this, in sizes of the tree, count as none. Choice. */
  private static final double SOFT_SIDE = 0.02;

  /** How far above the first branch another still counts as first, in tree heights. Choice. */
  private static final double SOFT_FIRST = 0.03;

  /** Branches this many times as far above the first weigh less than rounding. */
  private static final double FAR_ABOVE = 60;

  /** What each branch counts by itself, seen or not, against the trunk's profile. Choice. */
  private static final double UNSEEN = 1e-6;

  private final int count;

  /** Shape: one per piece or pad; profile area [m2]. */
  private final double[] weight;

  /** Shape: three per piece or pad; from the middle of the trunk line to its middle [m]. */
  private final double[] fromTrunk;

  /** Shape: three per piece or pad; from where its branch starts on the trunk [m]. */
  private final double[] fromStart;

  /** Shape: three per piece, none for pads; direction outward times its weight in the measure. */
  private final double[] outward;

  /** Shape: one per piece; weight of pointing at the viewer, by its height [m2]. */
  private final double[] low;

  private final int pieces;
  private final double total;
  private final double woodTotal;
  private final double size;

  /** Shape: three per branch; start on the trunk line from the trunk base [m]. */
  private final double[] starts;

  BranchFigures(Parts parts, TrunkFigures trunk, List<Ellipsoid> foliage) {
    size = parts.size;
    int[] branch =
        IntStream.range(0, parts.count()).filter(p -> parts.roles.get(p) == Role.BRANCH).toArray();
    pieces = branch.length;
    count = pieces + foliage.size();
    weight = new double[count];
    fromTrunk = new double[3 * count];
    fromStart = new double[3 * count];
    outward = new double[3 * pieces];
    low = new double[pieces];
    Point3 middle = trunk.middle();
    double sum = 0;
    for (int k = 0; k < pieces; k++) {
      Frustum piece = parts.pieces.get(branch[k]);
      Point3 mid = piece.start().toward(piece.end(), 0.5);
      weight[k] = Parts.profile(piece);
      sum += weight[k];
      set(fromTrunk, k, mid.minus(middle));
      set(fromStart, k, mid.minus(parts.branchStarts.get(parts.branchOf[branch[k]])));
      set(outward, k, piece.direction().vector());
      low[k] = weight[k] * Lower.weight(trunk.height(mid));
    }
    woodTotal = sum;
    for (int k = pieces; k < count; k++) {
      Ellipsoid pad = foliage.get(k - pieces);
      weight[k] = Math.PI * Math.pow(pad.halfX() * pad.halfY() * pad.halfZ(), 2.0 / 3);
      sum += weight[k];
      set(fromTrunk, k, pad.centre().minus(middle));
      set(fromStart, k, pad.centre().minus(trunk.nearest(pad.centre())));
    }
    total = sum;
    starts = new double[3 * parts.branchStarts.size()];
    for (int k = 0; k < parts.branchStarts.size(); k++) {
      set(starts, k, parts.branchStarts.get(k).minus(parts.base));
    }
  }

  private static void set(double[] to, int k, Vector3 vector) {
    to[3 * k] = vector.x();
    to[3 * k + 1] = vector.y();
    to[3 * k + 2] = vector.z();
  }

  private static double dot(double[] of, int k, Direction3 direction) {
    return of[3 * k] * direction.x()
        + of[3 * k + 1] * direction.y()
        + of[3 * k + 2] * direction.z();
  }

  boolean hasWood() {
    return pieces > 0;
  }

  boolean isEmpty() {
    return count == 0;
  }

  /** Part of the branch wood that points at the viewer below the crown [1]. */
  double pointing(Direction3 toward) {
    double sum = 0;
    for (int k = 0; k < pieces; k++) {
      double along = Math.max(0, dot(outward, k, toward));
      double squared = along * along;
      sum += low[k] * squared * squared;
    }
    return sum / woodTotal;
  }

  /** Part of branches and foliage behind the trunk [1]. */
  double behind(Direction3 toward) {
    double soft = SOFT_DEPTH * size;
    double sum = 0;
    for (int k = 0; k < count; k++) {
      double back = -dot(fromStart, k, toward);
      sum += weight[k] * (1 + back / Math.sqrt(back * back + soft * soft)) / 2;
    }
    return sum / total;
  }

  /** Moment to the viewer's right over all moments, -1 to 1 [1]. */
  double sides(Direction3 right) {
    double sum = 0;
    double all = 0;
    for (int k = 0; k < count; k++) {
      double moment = weight[k] * dot(fromTrunk, k, right);
      sum += moment;
      all += Math.abs(moment);
    }
    double none = SOFT_SIDE * size * total;
    return sum / Math.sqrt(all * all + none * none);
  }

  /** Height of the lowest branch seen above the trunk base [m]. */
  double first(Direction3 up, double extent, Seen seen) {
    int branches = starts.length / 3;
    double lowest = Double.POSITIVE_INFINITY;
    for (int k = 0; k < branches; k++) {
      lowest = Math.min(lowest, dot(starts, k, up));
    }
    double sum = 0;
    double weights = 0;
    for (int k = 0; k < branches; k++) {
      double height = dot(starts, k, up);
      double above = (height - lowest) / (SOFT_FIRST * extent);
      if (above < FAR_ABOVE) {
        double counts = (seen.branch(k) + UNSEEN) * Math.exp(-above);
        sum += counts * height;
        weights += counts;
      }
    }
    return sum / weights;
  }
}
