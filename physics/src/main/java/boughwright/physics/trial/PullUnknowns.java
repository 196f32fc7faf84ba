// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.WoodOverride;
import boughwright.physics.wood.SegmentWood;
import boughwright.physics.wood.WoodPrior;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is not known before a pull test, as independent standard normals: how stiff the species'
 * branch wood is, this tree's, each limb's, and the error of each caliper reading. A tree of wood
 * of one's own has no species; a modulus given by hand stands for all three.
 */
final class PullUnknowns {
  private static final int SPECIES = 0;
  private static final int TREE = 1;
  private static final int FIRST_LIMB = 2;

  private final Skeleton skeleton;
  private final TrialWood best;
  private final Limbs limbs;
  private final Readings readings;
  private final double[][] lnMoe;

  /**
   * @param skeleton the tree before its tests told anything
   * @param species values for its wood
   */
  PullUnknowns(Skeleton skeleton, Species species) {
    this.skeleton = skeleton;
    best = TrialWood.best(skeleton, species);
    limbs = new Limbs(skeleton);
    readings = new Readings(skeleton);
    lnMoe = new double[skeleton.size()][];
    for (int i = 0; i < lnMoe.length; i++) {
      lnMoe[i] = weights(i, species);
    }
  }

  private double[] weights(int i, Species species) {
    double[] weights = new double[size()];
    int limb = FIRST_LIMB + limbs.of(i);
    Optional<WoodOverride> known =
        skeleton.tree().overrideFor(skeleton.segment(i).id()).filter(o -> o.moe().isPresent());
    if (known.isPresent()) {
      weights[limb] = known.get().moeSpread().orElse(Beliefs.GIVEN_MOE_SPREAD);
      return weights;
    }
    boolean ofSpecies = skeleton.tree().wood() instanceof TreeWood.OfSpecies;
    weights[SPECIES] = ofSpecies ? WoodPrior.of(species).moeOfSpecies() : 0;
    weights[TREE] = WoodPrior.MOE_OF_TREE;
    weights[limb] = WoodPrior.MOE_OF_LIMB;
    return weights;
  }

  /** How many unknowns there are. */
  int size() {
    return reading(readings.count());
  }

  private int reading(int reading) {
    return FIRST_LIMB + limbs.count() + reading;
  }

  /** Change of ln MOE of a segment with every unknown [1]. */
  double[] lnMoe(int segment) {
    return lnMoe[segment].clone();
  }

  /** The best guess of the modulus of a segment [Pa]. */
  double bestMoe(int segment) {
    return best.segments().get(segment).moe();
  }

  /** The wood and the readings for given unknowns. */
  TrialWood at(double[] z) {
    List<SegmentWood> segments = new ArrayList<>();
    double[] starts = new double[skeleton.size()];
    double[] ends = new double[skeleton.size()];
    for (int i = 0; i < skeleton.size(); i++) {
      SegmentWood guess = best.segments().get(i);
      double factor = Math.exp(sum(lnMoe[i], z));
      segments.add(
          new SegmentWood(
              factor * guess.moe(),
              factor * guess.shearModulus(),
              guess.yieldStrain(),
              guess.basis()));
      starts[i] = readings.deviation() * z[reading(readings.atStart(i))];
      ends[i] = readings.deviation() * z[reading(readings.atEnd(i))];
    }
    return new TrialWood(List.copyOf(segments), starts, ends);
  }

  /** Change of ln of a test's predicted movement with every unknown [1]. */
  double[] row(PullObservation seen) {
    double[] row = new double[size()];
    for (int i = 0; i < skeleton.size(); i++) {
      for (int k = 0; k < row.length; k++) {
        row[k] += seen.byLnMoe()[i] * lnMoe[i][k];
      }
      row[reading(readings.atStart(i))] += seen.byStartReading()[i] * readings.deviation();
      row[reading(readings.atEnd(i))] += seen.byEndReading()[i] * readings.deviation();
    }
    return row;
  }

  static double sum(double[] weights, double[] z) {
    double sum = 0;
    for (int k = 0; k < z.length; k++) {
      sum += weights[k] * z[k];
    }
    return sum;
  }
}
