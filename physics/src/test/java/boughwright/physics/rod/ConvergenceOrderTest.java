// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The measured order of convergence on a tapered, curved, kinked rod in space with soft torsion, on
 * fixed meshes whose elements are halved, against shooting with Hipparchus.
 */
class ConvergenceOrderTest {
  private static final double LEAST_ORDER = 3.5;
  private static final int HALVINGS = 4;

  private static final RodCase RODS =
      RodCase.single(
          Rods.rootFrame(0.5, 0.3),
          new RodCase.Limb(
              -1,
              0,
              Vector3.ZERO,
              Rotation.about(Direction3.of(1, 1, 0), 0.4),
              1,
              new RodCase.Wood(1, 0.6, 4 / Math.PI, 4 / Math.PI / 16),
              new Vector3(-0.4, 0.6, 0)),
          List.of(new RodCase.Pull(RodCase.Place.on(0, 1), new Vector3(0.2, 0.5, -0.8))),
          List.of());

  private static RodPose onMesh(int perPiece) {
    List<RodLoads> stages = List.of(RODS.loads());
    MeshSolver solver =
        new MeshSolver(new MeshBuilder(RODS.model(), stages).build(perPiece), stages);
    PathFollower follower = new PathFollower(solver, 1e-4);
    assertThat(follower.run().arrived()).isTrue();
    return new RodPose(solver, follower.state, follower.lines(), solver.stages.get(0));
  }

  private static double order(double coarse, double fine, int halvings) {
    return Math.log(coarse / fine) / Math.log(2) / halvings;
  }

  @Test
  void position_asElementsAreHalved_convergesToFourthOrder() {
    ShootingPose truth = new ShootingTree(RODS).solve(6);
    double[] away = new double[HALVINGS];
    for (int k = 0; k < HALVINGS; k++) {
      RodPose pose = onMesh(1 << k);
      for (double s : new double[] {0.3, 0.5, 0.83, 1}) {
        double here = pose.section(0, s).position().distance(truth.at(0, s).position());
        away[k] = Math.max(away[k], here);
      }
    }
    print("position", away);
    assertThat(order(away[0], away[HALVINGS - 1], HALVINGS - 1)).isGreaterThan(LEAST_ORDER);
  }

  @Test
  void strain_asElementsAreHalved_convergesToFourthOrder() {
    ShootingPose truth = new ShootingTree(RODS).solve(6);
    double[] away = new double[HALVINGS];
    for (int k = 0; k < HALVINGS; k++) {
      RodPose pose = onMesh(1 << k);
      for (double s : new double[] {0, 0.3, 0.5, 0.83}) {
        double here = pose.section(0, s).addedCurvature() - truth.at(0, s).bending();
        away[k] = Math.max(away[k], Math.abs(here));
      }
    }
    print("strain", away);
    assertThat(order(away[0], away[HALVINGS - 1], HALVINGS - 1)).isGreaterThan(LEAST_ORDER);
  }

  private static void print(String what, double[] away) {
    if (Boolean.getBoolean("boughwright.measured")) {
      for (int k = 0; k < HALVINGS; k++) {
        double order = k == 0 ? Double.NaN : order(away[k - 1], away[k], 1);
        System.out.printf("ConvergenceOrderTest: %s %.2e order %.2f%n", what, away[k], order);
      }
    }
  }
}
