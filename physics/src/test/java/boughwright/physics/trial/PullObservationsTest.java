// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Small movements against closed forms of beam theory, from virtual work: a cone held at its thick
 * end moves by 4 P L3 / (3 pi E r1 r0^3) at its thin end.
 */
class PullObservationsTest {
  /** Promised for movements, as part of them. */
  private static final double MOVEMENT = 2e-3;

  /** Of slopes taken over finite steps, as part of the largest. */
  private static final double SLOPE = 0.01;

  /** So small that the movement is straight with the force [N]. */
  private static final double FORCE = 0.5;

  private static double cone(double force) {
    return 4
        * force
        * Math.pow(PullTrees.LENGTH, 3)
        / (3 * Math.PI * PullTrees.MOE * PullTrees.THIN * Math.pow(PullTrees.THICK, 3));
  }

  private static PullObservation observed(PullTest test) {
    Tree tree = PullTrees.of(PullTrees.ELASTIC, test);
    TrialWood best = TrialWood.best(new Skeleton(tree), SpeciesTable.bundled().generic());
    return PullObservations.of(tree, best).get(0);
  }

  @Test
  void residual_isNothing_forTheMovementOfACone() {
    PullTest test = PullTrees.down("p1", PullTrees.reading(FORCE, cone(FORCE)));
    assertThat(observed(test).residual()).isCloseTo(0, within(MOVEMENT));
  }

  @Test
  void residual_isTheLogarithm_ofMovingFurther() {
    PullTest test = PullTrees.down("p1", PullTrees.reading(FORCE, 1.7 * cone(FORCE)));
    assertThat(observed(test).residual()).isCloseTo(Math.log(1.7), within(MOVEMENT));
  }

  @Test
  void stiffness_sharesOutToMinusOne_overTheLimbAlone() {
    PullObservation seen = observed(PullTrees.down("p1", PullTrees.reading(FORCE, cone(FORCE))));
    assertThat(Arrays.stream(seen.byLnMoe()).sum()).isCloseTo(-1, within(SLOPE));
    assertThat(seen.byLnMoe()[0]).isZero();
    assertThat(seen.byLnMoe()[1]).isLessThan(seen.byLnMoe()[2]);
  }

  /** ln d falls with ln of the thin radius and three times ln of the thick one. */
  @Test
  void calipers_countAsInTheConeFormula() {
    PullObservation seen = observed(PullTrees.down("p1", PullTrees.reading(FORCE, cone(FORCE))));
    double thick = seen.byStartReading()[1];
    double thin = seen.byEndReading()[2];
    double middle = seen.byEndReading()[1] + seen.byStartReading()[2];
    // a cone stays a cone when thick and middle and thin move as its ends do
    assertThat(thick + middle / 2)
        .isCloseTo(3 / (2 * PullTrees.THICK), within(SLOPE * 3 / (2 * PullTrees.THICK)));
    assertThat(thin + middle / 2)
        .isCloseTo(1 / (2 * PullTrees.THIN), within(SLOPE * 3 / (2 * PullTrees.THIN)));
  }

  /**
   * A trunk that gives: the branch moves by P L3/3EI of its own, and the trunk's end turns by P L
   * h/EI under its couple, which moves the tip by L times that; its shift is taken off.
   */
  @Test
  void trunk_turnsTheUnion_whereTheBaseWasSeenToMove() {
    double inertia = Math.PI / 4 * Math.pow(PullTrees.TRUNK_RADIUS, 4);
    double turn = FORCE * PullTrees.LENGTH * PullTrees.HEIGHT / (PullTrees.MOE * inertia);
    double own = cone(FORCE);
    double moved = own + turn * PullTrees.LENGTH;
    double base = 0.3 * own;
    PullTest.Reading reading = new PullTest.Reading(FORCE, moved + base, base, 0.01, 0.0003);
    PullObservation seen = observed(PullTrees.down("p1", reading));
    assertThat(seen.residual()).isCloseTo(0, within(MOVEMENT));
    assertThat(seen.byLnMoe()[0]).isCloseTo(-turn * PullTrees.LENGTH / moved, within(SLOPE));
  }

  @Test
  void noise_ofTwoReadings_sharesTheForceScaleOnly() {
    double moved = cone(FORCE);
    PullTest.Reading one = new PullTest.Reading(FORCE, moved, 0, 0.04, 0.1 * moved);
    double single = observed(PullTrees.down("p1", one)).noiseVariance();
    double twice = observed(PullTrees.down("p1", one, one)).noiseVariance();
    double shared = 0.04 * 0.04 + PullPoint.MODEL_ERROR * PullPoint.MODEL_ERROR;
    assertThat(single).isCloseTo(0.01 + shared, within(SLOPE * single));
    assertThat(twice).isCloseTo(0.005 + shared, within(SLOPE * twice));
  }

  @Test
  void pullsThatBendNothing_areLeftOut() {
    PullTest good = PullTrees.down("p3", PullTrees.reading(FORCE, cone(FORCE)));
    Tree tree =
        PullTrees.of(PullTrees.ELASTIC, PullTrees.along("p1"), PullTrees.atStart("p2"), good);
    TrialWood best = TrialWood.best(new Skeleton(tree), SpeciesTable.bundled().generic());
    assertThat(PullObservations.of(tree, best))
        .extracting(PullObservation::test)
        .containsExactly("p3");
  }

  @Test
  void testsThatDisagree_areBelievedLess_thanTestsThatAgree() {
    PullTest one = PullTrees.down("p1", PullTrees.reading(6, cone(6)));
    PullTest same = PullTrees.down("p2", PullTrees.reading(6, 1.05 * cone(6)));
    PullTest odd = PullTrees.down("p2", PullTrees.reading(6, 2.2 * cone(6)));
    assertThat(agreedNoise(one, same)).isEqualTo(noise(one, same));
    assertThat(agreedNoise(one, odd)).isGreaterThan(10 * noise(one, odd));
  }

  private static double noise(PullTest... tests) {
    Tree tree = PullTrees.of(PullTrees.ELASTIC, tests);
    TrialWood best = TrialWood.best(new Skeleton(tree), SpeciesTable.bundled().generic());
    return PullObservations.of(tree, best).get(0).noiseVariance();
  }

  private static double agreedNoise(PullTest... tests) {
    Tree tree = PullTrees.of(PullTrees.ELASTIC, tests);
    Species species = SpeciesTable.bundled().generic();
    TrialWood best = TrialWood.best(new Skeleton(tree), species);
    return PullObservations.agreed(tree, species, best).get(0).noiseVariance();
  }
}
