// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.wood.SegmentWood;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** One pull test, predicted at one point and made linear around it. */
final class PullPoint {
  /**
   * Error of the prediction itself, as standard deviation of ln [1]: the place of the pull along
   * the branch, its direction, bark that carries a little (about 3 % of the bending stiffness of
   * fresh stems, Onoda et al. 2010), wood between two calipers that does not taper evenly. An
   * assumption.
   */
  static final double MODEL_ERROR = 0.05;

  /**
   * One standard deviation of the movement that the union's turning adds or takes, as a part of the
   * measured movement of the base: only its shift was read. An assumption [1].
   */
  static final double TURNING = 0.5;

  private static final double LN_STEP = 0.02;

  /** Step of a caliper reading, as a part of the thinner wood radius of the segment [1]. */
  private static final double RADIUS_STEP = 0.01;

  private final Skeleton skeleton;
  private final PullTest test;
  private final TrialWood wood;
  private final List<Reading> readings = new ArrayList<>();
  private final Sums sums;

  /**
   * One reading against its prediction.
   *
   * @param measured ln of the movement measured, base taken off, in metres [1]
   * @param predicted ln of the movement predicted likewise [1]
   * @param variance variance of ln measured from reading the movement alone [1]
   * @param holds whether the wood as taken holds the pull; if not, it was taken as elastic
   * @param peak the place bent hardest
   */
  record Reading(double measured, double predicted, double variance, boolean holds, Peak peak) {
    double residual() {
      return measured - predicted;
    }
  }

  /** Weighted sums over the readings. */
  private static final class Sums {
    private final double[] byLnMoe;
    private final double[] byStart;
    private final double[] byEnd;
    private double weight;
    private double residual;
    private double forceError;

    Sums(int segments) {
      byLnMoe = new double[segments];
      byStart = new double[segments];
      byEnd = new double[segments];
    }
  }

  /**
   * Predicts every reading of a test.
   *
   * @throws IllegalArgumentException if no pull there moves the point along the pull
   */
  PullPoint(Skeleton skeleton, PullTest test, TrialWood wood) {
    this.skeleton = skeleton;
    this.test = test;
    this.wood = wood;
    sums = new Sums(skeleton.size());
    test.readings().forEach(this::add);
  }

  PullTest test() {
    return test;
  }

  List<Reading> readings() {
    return List.copyOf(readings);
  }

  /**
   * How much further the point would move if nothing held the tree below the limb but its trunk
   * base, as a part of the movement predicted; 0 where the readings count that already [1].
   */
  double turningOfBase() {
    if (PulledBranch.baseMoves(test)) {
      return 0;
    }
    double force = test.readings().get(0).force();
    double held = new PulledBranch(skeleton, test, wood, false).under(force).moved();
    PulledBranch.Pulled loose = new PulledBranch(skeleton, test, wood, true).under(force);
    return loose.holds() ? loose.movedInAll() / held - 1 : 0;
  }

  /**
   * Variance of the residual where wood and calipers are known, for judging whether a movement may
   * be an error of reading: such errors count against the larger of what was read and expected [1].
   *
   * @param lnOver ln of the movement read over the one expected [1]
   */
  double noiseVariance(double lnOver) {
    double moe = 0;
    for (int i = 0; i < skeleton.size(); i++) {
      moe += sums.byLnMoe[i] / sums.weight;
    }
    // movement depends on force over modulus alone, so its slope with ln force is minus that
    double force = moe * sums.forceError / sums.weight;
    return Math.exp(2 * Math.min(0, lnOver)) / sums.weight
        + force * force
        + MODEL_ERROR * MODEL_ERROR;
  }

  /** The whole test as one observation. */
  PullObservation observation() {
    return new PullObservation(
        test.id(),
        sums.residual / sums.weight,
        over(sums.byLnMoe),
        over(sums.byStart),
        over(sums.byEnd),
        noiseVariance(0));
  }

  private double[] over(double[] values) {
    double[] out = values.clone();
    for (int i = 0; i < out.length; i++) {
      out[i] /= sums.weight;
    }
    return out;
  }

  private void add(PullTest.Reading read) {
    double net = read.moved() - read.baseMoved();
    PulledBranch.Pulled pulled = pulled(wood, read);
    boolean holds = pulled.holds();
    TrialWood point = wood;
    if (!holds) {
      point = elastic(wood);
      pulled = pulled(point, read);
    }
    Reading reading =
        new Reading(
            Math.log(net),
            lnMoved(pulled),
            variance(read, net),
            holds,
            pulled.peak().orElseThrow());
    readings.add(reading);
    double weight = 1 / reading.variance();
    sums.weight += weight;
    sums.residual += weight * reading.residual();
    sums.forceError += weight * read.forceError();
    for (int i : pulled.bent()) {
      addSlopes(i, new At(point, read, reading.predicted()), weight);
    }
  }

  /**
   * Where slopes are taken.
   *
   * @param wood the point
   * @param read the reading
   * @param predicted ln of the movement predicted there, in metres
   */
  private record At(TrialWood wood, PullTest.Reading read, double predicted) {}

  private void addSlopes(int i, At at, double weight) {
    sums.byLnMoe[i] += weight * slope(LN_STEP, at, h -> stiffer(at.wood, i, h));
    double step = RADIUS_STEP * radius(i);
    sums.byStart[i] += weight * slope(step, at, h -> misread(at.wood, i, new double[] {h, 0}));
    sums.byEnd[i] += weight * slope(step, at, h -> misread(at.wood, i, new double[] {0, h}));
  }

  private double slope(double step, At at, DoubleFunction<TrialWood> moved) {
    return (lnMoved(pulled(moved.apply(step), at.read))
            - lnMoved(pulled(moved.apply(-step), at.read)))
        / (2 * step);
  }

  private double radius(int i) {
    double bark = skeleton.segment(i).bark().orElse(skeleton.tree().bark().orElse(0));
    return Math.min(skeleton.segment(i).caliperStart(), skeleton.segment(i).caliperEnd()) / 2
        - bark;
  }

  private static double variance(PullTest.Reading read, double net) {
    double error = read.movedError();
    double base = read.baseMoved() == 0 ? 0 : Math.hypot(error, TURNING * read.baseMoved());
    return (error * error + base * base) / (net * net);
  }

  private PulledBranch.Pulled pulled(TrialWood assumed, PullTest.Reading read) {
    PulledBranch branch = new PulledBranch(skeleton, test, assumed);
    if (branch.isHeld()) {
      throw new IllegalArgumentException(
          "pull test " + test.id() + " pulls where the tree is held");
    }
    return branch.under(read.force());
  }

  private double lnMoved(PulledBranch.Pulled pulled) {
    double moved = pulled.moved();
    if (!(moved > 0)) {
      throw new IllegalArgumentException(
          "pull test " + test.id() + ": the pull does not move the point its own way");
    }
    return Math.log(moved);
  }

  private static TrialWood stiffer(TrialWood wood, int i, double byLn) {
    List<SegmentWood> segments = new ArrayList<>(wood.segments());
    SegmentWood old = segments.get(i);
    double factor = Math.exp(byLn);
    segments.set(
        i,
        new SegmentWood(
            factor * old.moe(), factor * old.shearModulus(), old.yieldStrain(), old.basis()));
    return new TrialWood(List.copyOf(segments), wood.startReading(), wood.endReading());
  }

  private static TrialWood misread(TrialWood wood, int i, double[] error) {
    double[] start = wood.startReading().clone();
    double[] end = wood.endReading().clone();
    start[i] += error[0];
    end[i] += error[1];
    return new TrialWood(wood.segments(), start, end);
  }

  private static TrialWood elastic(TrialWood wood) {
    List<SegmentWood> segments =
        wood.segments().stream()
            .map(
                one ->
                    new SegmentWood(
                        one.moe(), one.shearModulus(), Double.POSITIVE_INFINITY, one.basis()))
            .toList();
    return new TrialWood(segments, wood.startReading(), wood.endReading());
  }
}
