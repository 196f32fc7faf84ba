// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.linear.ArrayRealVector;

/** Finds the pull that each place would need. */
final class WishFinder {
  /**
   * Weight of the force itself beside what is missing [1]: a pull along the branch does next to
   * nothing and would grow without end.
   */
  private static final double FORCE_WEIGHT = 0.03;

  /** Least distance that the scale of the force is taken from [m]. */
  private static final double LEAST_MOVE = 0.005;

  /** Slopes are taken over this part of the scale of the force [1]. */
  private static final double STEP = 0.05;

  /** No force is looked at that is more than this many times its scale [1]. */
  private static final double MOST = 30;

  private static final int STEPS = 5;
  private static final int TRIALS = 9;

  /** Improvements smaller than this part of the way are not worth another step [1]. */
  private static final double ENOUGH = 0.02;

  private final Probe probe;
  private final List<Tie> ties;
  private final Tried start;

  /**
   * For a tree under some lines already.
   *
   * @param start what they bring
   */
  WishFinder(Probe probe, Tried start) {
    this.probe = probe;
    ties = start.ties();
    this.start = start;
  }

  /** The pull a place would need. */
  Optional<Wish> at(TiePlace place) {
    double scale = Math.max(start.miss(), LEAST_MOVE) / place.compliance();
    Fit.Box box = box(scale);
    double[] best = Fit.of(force -> weighted(place, force, scale), box, effort(), new double[3]);
    return around(place, best, box);
  }

  private Fit.Effort effort() {
    return new Fit.Effort(STEPS, TRIALS, ENOUGH * Math.max(start.miss(), LEAST_MOVE));
  }

  /** How things change with a small pull at a place, without looking for the best. */
  Optional<Wish> response(TiePlace place) {
    double scale = Math.max(start.miss(), LEAST_MOVE) / place.compliance();
    return around(place, new double[3], box(scale));
  }

  private static Fit.Box box(double scale) {
    double[] high = new double[3];
    double[] low = new double[3];
    double[] step = new double[3];
    Arrays.fill(high, MOST * scale);
    Arrays.fill(low, -MOST * scale);
    Arrays.fill(step, STEP * scale);
    return new Fit.Box(low, high, step);
  }

  private Optional<double[]> weighted(TiePlace place, double[] force, double scale) {
    return pull(place, force)
        .map(
            tried -> {
              double[] all = Arrays.copyOf(tried.missing(), tried.missing().length + 3);
              for (int k = 0; k < 3; k++) {
                all[tried.missing().length + k] =
                    FORCE_WEIGHT * Math.max(start.miss(), LEAST_MOVE) * force[k] / scale;
              }
              return all;
            });
  }

  private Optional<Tried> pull(TiePlace place, double[] force) {
    return probe.pull(ties, place.spot(), new Vector3(force[0], force[1], force[2]));
  }

  private Optional<Wish> around(TiePlace place, double[] force, Fit.Box box) {
    Optional<Tried> here = pull(place, force);
    if (here.isEmpty()) {
      return Optional.empty();
    }
    Point3 at = here.get().stood().point(place.spot());
    int count = here.get().missing().length;
    Function<double[], Optional<double[]>> both =
        x -> pull(place, x).map(tried -> both(tried, place));
    double[][] slopes = Fit.slopes(both, box, force, both(here.get(), place));
    return Optional.of(
        new Wish(
            place,
            new Vector3(force[0], force[1], force[2]),
            at,
            here.get().miss(),
            new ArrayRealVector(here.get().missing()),
            Wish.matrix(Arrays.copyOf(slopes, count)),
            Wish.matrix(Arrays.copyOfRange(slopes, count, count + 3))));
  }

  private static double[] both(Tried tried, TiePlace place) {
    Point3 at = tried.stood().point(place.spot());
    int count = tried.missing().length;
    double[] all = Arrays.copyOf(tried.missing(), count + 3);
    all[count] = at.x();
    all[count + 1] = at.y();
    all[count + 2] = at.z();
    return all;
  }
}
