// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Own weight: a uniform cantilever by handbook, and trees whose given shape is the one they have
 * settled into under their weight, with gravity as it was and turned. Invented figures, exaggerated
 * so that the weight bends far.
 */
class SelfWeightTest {
  private static final Measured MEASURED = new Measured(SelfWeightTest.class);

  /** Rounding of moments in a chain of some ten elements, and of Newton's last step. */
  private static final double ROUNDING = 1e-10;

  private static final double MOE = 5e9;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private static final RodCase.Limb TRUNK =
      RodCase.Limb.trunk(
          0.4, new RodCase.Wood(0.009, 0.004, MOE, MOE / 16), new Vector3(1.5, 1, 0.5));

  private static final RodCase.Limb SIDE =
      new RodCase.Limb(
          0,
          0.25,
          new Vector3(0.004, 0.002, 0.006),
          Rotation.about(Direction3.of(0.4, 1, 0), 0.9),
          0.25,
          new RodCase.Wood(0.005, 0.002, MOE, MOE / 16),
          new Vector3(0, -2, 0));

  /** Weight along both limbs, pulling a way. */
  private static RodCase tree(Vector3 pull) {
    return new RodCase(
        Rods.rootFrame(0.6, 0.3),
        List.of(TRUNK, SIDE),
        List.of(),
        List.of(),
        List.of(
            new RodCase.Spread(0, pull, 80, -200, 150), new RodCase.Spread(1, pull, 30, -90, 60)));
  }

  private static RodSolution settled(RodCase asGrown, RodCase now) {
    RodSolution solution =
        RodSolver.solve(asGrown.model(asGrown.spreads()), now.loads(), RodOptions.DEFAULT);
    assertThat(solution.status().holds()).as(solution.status().toString()).isTrue();
    return solution;
  }

  /** w L^4 / (8 EI): Gere and Timoshenko, Mechanics of Materials, table of deflections. */
  @Test
  void lightWeightAlongACantilever_givesTheHandbookDeflection() {
    double weight = 1e-5;
    RodLoads loads =
        new RodLoads(
            List.of(),
            List.of(),
            List.of(new SpanWeight(0, new Vector3(0, 0, -1), weight, 0, 0)),
            List.of());
    RodSolution solution = RodSolver.solve(Rods.unit(0, Vector3.ZERO), loads, RodOptions.DEFAULT);
    double drop = -solution.pose().section(0, 1).position().z();
    MEASURED.check("w L^4 / 8 EI", drop * 8 / weight - 1, 1e-6);
    double moment = solution.pose().section(0, 0).bendingMoment();
    MEASURED.check("w L^2 / 2", moment * 2 / weight - 1, 1e-8);
  }

  /**
   * In its given shape a settled tree is at rest, but not free of stress. Straight limbs stay to
   * rounding; curved ones keep their directions to rounding, and their positions as well as the
   * elements add up an arc.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void settledTree_underExactlyItsWeights_staysAsGiven(boolean curved) {
    RodCase tree = curved ? tree(new Vector3(0, 0, -1)) : straight(tree(new Vector3(0, 0, -1)));
    RodSolution solution = settled(tree, tree);
    RodPose given = RodSolver.solve(tree.model(), RodLoads.NONE, RodOptions.DEFAULT).pose();
    Vector3 along = new Vector3(0, 0, 1);
    for (int i = 0; i < 2; i++) {
      double length = tree.limbs().get(i).length();
      for (double s : new double[] {0, 0.25, length}) {
        RodSection now = tree.section(solution.pose(), i, s);
        RodSection then = tree.section(given, i, s);
        double turned = now.frame().turn(along).minus(then.frame().turn(along)).norm();
        double away = now.position().distance(then.position()) / length;
        MEASURED.check("settled, direction", turned, ROUNDING);
        if (curved) {
          MEASURED.check(
              "settled and curved, position / L", away, RodOptions.DEFAULT.positionError());
        } else {
          MEASURED.check("settled and straight, position / L", away, ROUNDING);
        }
      }
    }
    assertThat(solution.pose().section(0, 0).bendingMoment()).isGreaterThan(1);
  }

  private static RodCase straight(RodCase tree) {
    List<RodCase.Limb> limbs =
        tree.limbs().stream()
            .map(
                limb ->
                    new RodCase.Limb(
                        limb.parent(),
                        limb.at(),
                        limb.offset(),
                        limb.turn(),
                        limb.length(),
                        limb.wood(),
                        Vector3.ZERO))
            .toList();
    return new RodCase(tree.baseFrame(), limbs, List.of(), List.of(), tree.spreads());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 1.2, 2.5})
  void settledTree_underTurnedGravity_isWhereShootingPutsIt(double angle) {
    RodCase grown = tree(new Vector3(0, 0, -1));
    Rotation turn = Rotation.about(Direction3.of(1, 0.4, 0), angle);
    RodCase now = tree(turn.turn(new Vector3(0, 0, -1)));
    RodSolution solution = settled(grown, now);
    ShootingTree shooting = new ShootingTree(now, new SettledCurvature(grown, grown.spreads()));
    ShootingPose truth = shooting.solve(8);
    for (int i = 0; i < 2; i++) {
      double length = now.limbs().get(i).length();
      double largest = 0;
      double wrong = 0;
      for (int k = 0; k <= 16; k++) {
        double s = length * k / 16;
        RodSection section = now.section(solution.pose(), i, s);
        double away = section.position().distance(truth.at(i, s).position());
        MEASURED.check("position / L", away / length, Accuracy.POSITION);
        double radius = now.limbs().get(i).wood().radius(s / length);
        largest = Math.max(largest, truth.fibreStrain(i, s));
        double strain = radius * section.addedCurvature();
        wrong = Math.max(wrong, Math.abs(strain - truth.fibreStrain(i, s)));
      }
      MEASURED.check("strain", wrong / largest, Accuracy.STRAIN);
    }
  }

  /** Turning gravity moves the tips far enough for the check above to mean something. */
  @Test
  void turnedGravity_movesTheTree() {
    RodCase grown = tree(new Vector3(0, 0, -1));
    RodCase now = tree(new Vector3(0, 1, 0));
    RodSection before = grown.section(settled(grown, grown).pose(), 1, SIDE.length());
    RodSection after = now.section(settled(grown, now).pose(), 1, SIDE.length());
    assertThat(after.position().distance(before.position())).isGreaterThan(0.1 * TRUNK.length());
  }
}
