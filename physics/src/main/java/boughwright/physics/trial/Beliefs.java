// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.WoodOverride;
import boughwright.physics.wood.BranchStiffness;
import boughwright.physics.wood.SegmentWood;
import boughwright.physics.wood.WoodPrior;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What is believed of the wood and the readings of one tree, as independent standard normal
 * variables: four that all limbs share (modulus of the species' branch wood and of this tree, yield
 * strain of both), and of their own two per limb and one per caliper reading. Given moduli and pull
 * tests narrow them.
 */
final class Beliefs {
  /** Indices of the shared variables. */
  static final int MOE_OF_SPECIES = 0;

  static final int MOE_OF_TREE = 1;
  static final int YIELD_OF_SPECIES = 2;
  static final int YIELD_OF_TREE = 3;
  static final int SHARED = 4;

  /** Spread of a modulus that a person gives without saying how sure it is [1] (assumption). */
  static final double GIVEN_MOE_SPREAD = 0.10;

  private final Skeleton skeleton;
  private final WoodPrior prior;
  private final Limbs limbs;
  private final Readings readings;
  private final TrialWood best;
  private final Evidence evidence;

  /** ln of the modulus of each segment when all variables are 0. */
  private final double[] centre;

  /**
   * From the tree and what it was seen to do.
   *
   * @param request what is tried, and on which tree
   * @param skeleton that tree
   * @param tests pull tests, made linear around the best guess
   */
  Beliefs(TrialRequest request, Skeleton skeleton, List<PullObservation> tests) {
    this.skeleton = skeleton;
    prior = WoodPrior.of(request.species());
    limbs = new Limbs(skeleton);
    readings = new Readings(skeleton);
    best = TrialWood.best(skeleton, request.species());
    double table = Math.log(request.species().trueMoe() * BranchStiffness.BRANCH_FACTOR);
    double[] given = new double[skeleton.size()];
    for (int i = 0; i < given.length; i++) {
      given[i] = Math.log(best.segments().get(i).moe()) - table;
    }
    List<Evidence.Observation> seen = new ArrayList<>();
    tests.forEach(test -> seen.add(observation(test, given)));
    Set<String> tested = tests.stream().map(PullObservation::test).collect(Collectors.toSet());
    seen.addAll(givenModuli(given, limbsOf(tested)));
    evidence = new Evidence(seen);
    centre = centre(table, given);
  }

  private Set<Integer> limbsOf(Set<String> tests) {
    return skeleton.tree().pullTests().stream()
        .filter(test -> tests.contains(test.id()))
        .map(test -> limbs.of(skeleton.indexOf(test.segment())))
        .collect(Collectors.toSet());
  }

  private Evidence.Observation observation(PullObservation test, double[] given) {
    double[] shared = new double[SHARED];
    double[] own = new double[ownCount()];
    double value = test.residual();
    for (int i = 0; i < skeleton.size(); i++) {
      double weight = test.byLnMoe()[i];
      value += weight * given[i];
      weigh(shared, own, i, weight);
      own[reading(readings.atStart(i))] += readings.deviation() * test.byStartReading()[i];
      own[reading(readings.atEnd(i))] += readings.deviation() * test.byEndReading()[i];
    }
    return new Evidence.Observation(value, shared, own, test.noiseVariance());
  }

  private void weigh(double[] shared, double[] own, int i, double weight) {
    shared[MOE_OF_SPECIES] += weight * prior.moeOfSpecies();
    shared[MOE_OF_TREE] += weight * WoodPrior.MOE_OF_TREE;
    own[limbs.of(i)] += weight * WoodPrior.MOE_OF_LIMB;
  }

  /** Moduli that a person gives, once per limb and value, where no test of that limb is kept. */
  private List<Evidence.Observation> givenModuli(double[] given, Set<Integer> tested) {
    List<Evidence.Observation> seen = new ArrayList<>();
    Set<String> done = new TreeSet<>();
    for (int i = 0; i < skeleton.size(); i++) {
      boolean first = done.add(limbs.of(i) + " " + given[i]);
      if (isGiven(i) && first && !tested.contains(limbs.of(i))) {
        double[] shared = new double[SHARED];
        double[] own = new double[ownCount()];
        weigh(shared, own, i, 1);
        double spread = spread(i);
        seen.add(new Evidence.Observation(given[i], shared, own, spread * spread));
      }
    }
    return seen;
  }

  private Optional<WoodOverride> override(int i) {
    return skeleton.tree().overrideFor(skeleton.segment(i).id());
  }

  private boolean isGiven(int i) {
    return skeleton.tree().wood() instanceof TreeWood.Own
        || override(i)
            .flatMap(o -> o.moe().isPresent() ? Optional.of(o) : Optional.empty())
            .isPresent();
  }

  private double spread(int i) {
    return override(i)
        .map(override -> override.moeSpread().orElse(GIVEN_MOE_SPREAD))
        .orElse(GIVEN_MOE_SPREAD);
  }

  /** Segments with a modulus of their own are centred on it, whatever the rest says. */
  private double[] centre(double table, double[] given) {
    double[] shared = evidence.sharedMean(SHARED);
    double[] own = evidence.ownMean(ownCount());
    double[] centre = new double[skeleton.size()];
    for (int i = 0; i < centre.length; i++) {
      centre[i] = table + (isGiven(i) ? given[i] - deviation(shared, own, i) : 0);
    }
    return centre;
  }

  private double deviation(double[] shared, double[] own, int i) {
    return prior.moeOfSpecies() * shared[MOE_OF_SPECIES]
        + WoodPrior.MOE_OF_TREE * shared[MOE_OF_TREE]
        + WoodPrior.MOE_OF_LIMB * own[limbs.of(i)];
  }

  WoodPrior prior() {
    return prior;
  }

  Limbs limbs() {
    return limbs;
  }

  Readings readings() {
    return readings;
  }

  Evidence evidence() {
    return evidence;
  }

  TrialWood best() {
    return best;
  }

  /** How many variables are not shared. */
  int ownCount() {
    return 2 * limbs.count() + readings.count();
  }

  /** Index of the variable of a caliper reading among those not shared. */
  int reading(int reading) {
    return 2 * limbs.count() + reading;
  }

  /** The wood under some values of the variables. */
  TrialWood wood(double[] shared, double[] own) {
    List<SegmentWood> segments = new ArrayList<>(skeleton.size());
    double[] start = new double[skeleton.size()];
    double[] end = new double[skeleton.size()];
    for (int i = 0; i < skeleton.size(); i++) {
      segments.add(segment(i, shared, own));
      start[i] = readings.deviation() * own[reading(readings.atStart(i))];
      end[i] = readings.deviation() * own[reading(readings.atEnd(i))];
    }
    return new TrialWood(segments, start, end);
  }

  private SegmentWood segment(int i, double[] shared, double[] own) {
    SegmentWood wood = best.segments().get(i);
    double moe = Math.exp(centre[i] + deviation(shared, own, i));
    double yield = Math.exp(yieldDeviation(shared, own, i));
    return new SegmentWood(
        moe, wood.shearModulus() * moe / wood.moe(), wood.yieldStrain() * yield, wood.basis());
  }

  private double yieldDeviation(double[] shared, double[] own, int i) {
    int limb = limbs.of(i);
    return prior.yieldOfSpecies() * shared[YIELD_OF_SPECIES]
        + WoodPrior.yieldWithin(shared[MOE_OF_TREE], shared[YIELD_OF_TREE])
        + WoodPrior.yieldWithin(own[limb], own[limbs.count() + limb]);
  }

  /** Change of ln (limit over modulus) of each limb that goes with the moduli drawn. */
  double[] limitShift(double[] shared, double[] own) {
    double[] shift = new double[limbs.count()];
    Arrays.setAll(
        shift,
        limb -> WoodPrior.limitFollowsMoe(shared[MOE_OF_SPECIES], shared[MOE_OF_TREE] + own[limb]));
    return shift;
  }

  /** Deviation of ln MOE and of ln yield strain of a limb, for telling what decides. */
  double[] limbDeviation(double[] shared, double[] own, int limb) {
    int i = limbs.first(limb);
    return new double[] {deviation(shared, own, i), yieldDeviation(shared, own, i)};
  }
}
