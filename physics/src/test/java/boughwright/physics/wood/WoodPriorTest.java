// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Grain;
import boughwright.modeller.tree.Knots;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WoodPriorTest {
  private static final int DRAWS = 100_000;

  /** A median green hardwood: MOR over MOE 0.61 % in a wood of its own. */
  private static WoodPrior hardwood() {
    Species beech = SpeciesTable.bundled().woodFor("fagus-sylvatica");
    return WoodPrior.of(
        new Species(
            "x",
            "x",
            java.util.List.of(),
            10e9,
            boughwright.modeller.species.MoeBasis.AS_PRINTED,
            OptionalDouble.of(61e6),
            OptionalDouble.of(26e6),
            beech.shear(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            "test",
            "memory"));
  }

  /** Medians recommended for living branches, 1.35 D^-0.21 % doubled, rounded there to 0.1 %. */
  @ParameterizedTest
  @CsvSource({"5, 1.9", "10, 1.7", "20, 1.4", "40, 1.2"})
  void crackStrain_fallsWithDiameterAsTheThreePointsSay(double mm, double percent) {
    assertThat(100 * hardwood().crackStrain(mm / 1000)).isCloseTo(percent, within(0.055));
  }

  @Test
  void crackStrain_ofThickWoodIsNeverBelowClearWood() {
    assertThat(hardwood().crackStrain(0.08)).isCloseTo(2 * 0.0061, within(1e-12));
  }

  /** Forest Products Laboratory 2010, FPL-GTR-190, Table 5-6: MOE 22, MOR 16, crushing 18 %. */
  @Test
  void withinASpecies_valuesScatterAsTheHandbookTableSays() {
    Random random = new Random(11);
    SummaryStatistics moe = new SummaryStatistics();
    SummaryStatistics mor = new SummaryStatistics();
    SummaryStatistics crushing = new SummaryStatistics();
    double tree = WoodPrior.MOE_OF_TREE;
    Doubt ratio = ratioWithin();
    for (int n = 0; n < DRAWS; n++) {
      double z1 = random.nextGaussian();
      double z2 = random.nextGaussian();
      double stiffness = tree * z1 + WoodPrior.MOE_OF_LIMB * z2;
      double strength =
          stiffness
              + WoodPrior.limitFollowsMoe(0, z1 + z2)
              + Math.sqrt(2) * ratio.varies() * random.nextGaussian();
      double yield =
          WoodPrior.yieldWithin(z1, random.nextGaussian())
              + WoodPrior.yieldWithin(z2, random.nextGaussian());
      moe.addValue(Math.exp(stiffness));
      mor.addValue(Math.exp(strength));
      crushing.addValue(Math.exp(stiffness + yield));
    }
    assertThat(variation(moe)).isCloseTo(0.22, within(0.004));
    assertThat(variation(mor)).isCloseTo(0.16, within(0.004));
    assertThat(variation(crushing)).isCloseTo(0.18, within(0.004));
  }

  /** What a limb's strength over stiffness varies by on its own: the crack's, less the model. */
  private static Doubt ratioWithin() {
    return hardwood().crack();
  }

  private static double variation(SummaryStatistics values) {
    return values.getStandardDeviation() / values.getMean();
  }

  /** Living branches: correlation of ln strength with ln stiffness 0.76 between species. */
  @Test
  void betweenSpecies_strengthGoesWithStiffness() {
    Random random = new Random(12);
    double[] stiffness = new double[DRAWS];
    double[] strength = new double[DRAWS];
    Doubt crack = hardwood().crack();
    double model = 0.27;
    double within = crack.varies();
    double left = Math.sqrt(crack.unknown() * crack.unknown() - model * model - within * within);
    for (int n = 0; n < DRAWS; n++) {
      double z = random.nextGaussian();
      stiffness[n] = 0.35 * z;
      strength[n] = stiffness[n] + WoodPrior.limitFollowsMoe(z, 0) + left * random.nextGaussian();
    }
    assertThat(new PearsonsCorrelation().correlation(stiffness, strength))
        .isCloseTo(0.76, within(0.01));
  }

  /** Living branches: the strain at the crack has a coefficient of variation of 0.40 in all. */
  @Test
  void crackStrain_scattersInAllAsRecommended() {
    Doubt crack = hardwood().crack();
    double follows = Math.hypot(WoodPrior.limitFollowsMoe(1, 0), 0);
    double withinTree = WoodPrior.limitFollowsMoe(0, 1);
    double variance =
        crack.total() * crack.total() + follows * follows + 2 * withinTree * withinTree;
    assertThat(Math.sqrt(Math.expm1(variance))).isCloseTo(0.40, within(0.015));
  }

  @Test
  void standIn_isKnownLessWellThanAPublishedWood() {
    WoodPrior published = WoodPrior.of(SpeciesTable.bundled().woodFor("carpinus-betulus"));
    WoodPrior standIn = WoodPrior.of(SpeciesTable.bundled().generic());
    assertThat(standIn.moeOfSpecies()).isGreaterThan(1.1 * published.moeOfSpecies());
    assertThat(standIn.yieldOfSpecies()).isGreaterThan(1.1 * published.yieldOfSpecies());
    assertThat(standIn.crack().unknown()).isGreaterThan(1.1 * published.crack().unknown());
    assertThat(standIn.across().unknown()).isGreaterThan(published.across().unknown());
  }

  @Test
  void everyWoodOfTheTable_hasPositiveLimits() {
    for (Species species : SpeciesTable.bundled().all()) {
      WoodPrior prior = WoodPrior.of(species);
      assertThat(prior.yieldStrain()).as(species.key()).isBetween(0.001, 0.01);
      assertThat(prior.crackStrain(0.01)).as(species.key()).isBetween(0.008, 0.04);
      assertThat(prior.acrossOverMoe(0.01)).as(species.key()).isBetween(1e-5, 0.003);
      assertThat(prior.shearOverMoe(0.01)).as(species.key()).isBetween(3e-4, 0.005);
    }
  }

  @Test
  void knotsAndGrain_weaken() {
    assertThat(WoodPrior.weakening(Features.NONE, false)).isEqualTo(1);
    assertThat(WoodPrior.weakening(Features.NONE, true)).isLessThan(1);
    // Kane 2007: whole branches bear 0.72 of what clear samples of the same branches bear.
    assertThat(WoodPrior.weakening(ticked(Knots.MANY, Grain.STRAIGHT), false)).isEqualTo(0.72);
    assertThat(WoodPrior.weakening(ticked(Knots.NONE, Grain.STRAIGHT), true)).isEqualTo(1);
    assertThat(WoodPrior.weakening(ticked(Knots.SOME, Grain.SLOPING), false))
        .isLessThan(WoodPrior.weakening(ticked(Knots.SOME, Grain.STRAIGHT), false));
  }

  private static Features ticked(Knots knots, Grain grain) {
    return new Features(
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(knots),
        Optional.of(grain),
        false);
  }
}
