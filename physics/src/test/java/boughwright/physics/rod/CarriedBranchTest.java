// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Branches and ends without load are carried along rigidly, without strain. */
class CarriedBranchTest {
  private static final double ROUNDING = 1e-12;
  private static final Vector3 LINK = new Vector3(0.02, 0.01, 0.03);
  private static final Rotation KINK = Rotation.about(Direction3.of(1, 1, 0), 0.8);

  /** A trunk of two spans, a branch on their joint, a twig on the branch, all curved. */
  private static final RodModel MODEL =
      RodModel.of(
          new Point3(0.1, 0.2, 0.3),
          Rods.rootFrame(0.6, 0.2),
          List.of(
              span(-1, Vector3.ZERO, Rotation.NONE),
              span(0, Vector3.ZERO, Rotation.NONE),
              span(0, LINK, KINK),
              span(2, LINK, KINK)));

  private static RodSpan span(int parent, Vector3 offset, Rotation turn) {
    return new RodSpan(parent, offset, turn, 0.5, new Vector3(0.3, -0.7, 0.2), Rods.tapered(0));
  }

  private static RodSolution bent() {
    RodSolution solution =
        RodSolver.solve(
            MODEL,
            RodLoads.ofForces(
                new RodLoads.DeadForce(RodPlace.onAxis(1, 0.3), new Vector3(0.5, 2, -3))),
            RodOptions.DEFAULT);
    assertThat(solution.status().holds()).isTrue();
    return solution;
  }

  private static RodPose rest() {
    RodSolution solution = RodSolver.solve(MODEL, RodLoads.NONE, RodOptions.DEFAULT);
    assertThat(solution.status().holds()).isTrue();
    return solution.pose();
  }

  /** Where a place is, seen from the end of the trunk's first span. */
  private static Vector3 seen(RodPose pose, int span, double s, int from, double fromS) {
    RodSection eye = pose.section(from, fromS);
    return eye.frame().inverse().turn(pose.section(span, s).position().minus(eye.position()));
  }

  @Test
  void branchesWithoutLoad_keepTheirPlaceOnTheirParent() {
    RodPose pose = bent().pose();
    RodPose rest = rest();
    assertThat(pose.section(1, 0.3).position().distance(rest.section(1, 0.3).position()))
        .isGreaterThan(0.1);
    for (int span : new int[] {2, 3}) {
      for (double s : new double[] {0, 0.2, 0.5}) {
        Vector3 moved = seen(pose, span, s, 0, 0.5).minus(seen(rest, span, s, 0, 0.5));
        assertThat(moved.norm()).isLessThan(ROUNDING);
        assertThat(pose.section(span, s).addedCurvature()).isZero();
        assertThat(pose.section(span, s).moment()).isEqualTo(Vector3.ZERO);
      }
    }
  }

  @Test
  void endBeyondTheLastLoad_keepsItsShape() {
    RodPose pose = bent().pose();
    RodPose rest = rest();
    Vector3 moved = seen(pose, 1, 0.5, 1, 0.3).minus(seen(rest, 1, 0.5, 1, 0.3));
    assertThat(moved.norm()).isLessThan(ROUNDING);
    assertThat(pose.section(1, 0.4).addedCurvature()).isZero();
  }

  @Test
  void modelWithoutLoad_staysInItsRestShape() {
    RodPose rest = rest();
    // arc of curvature u: chord (2 / k) sin(k s / 2) across its axis, source: circle geometry
    double rate = Math.hypot(0.3, 0.7);
    RodModel arc =
        Rods.single(Rods.rootFrame(0, 0), 0.5, new Vector3(0.3, -0.7, 0), Rods.tapered(0));
    RodPose pose = RodSolver.solve(arc, RodLoads.NONE, RodOptions.DEFAULT).pose();
    double chord = pose.section(0, 0.5).position().distance(Point3.ORIGIN);
    assertThat(Math.abs(chord - 2 / rate * Math.sin(rate * 0.25))).isLessThan(ROUNDING);
    assertThat(rest.section(3, 0.5).addedCurvature()).isZero();
  }
}
