// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must not change an answer: mirror, turn, scale, how finely the rod was measured. */
class InvarianceTest {
  /** Rounding, through some ten Newton steps. */
  private static final double ROUNDING = 1e-9;

  /** Two meshes of one problem. */
  private static final double SAME = 2 * RodOptions.DEFAULT.positionError();

  private static final Vector3 CURVATURE = new Vector3(-0.4, 0.5, 0);
  private static final Vector3 FORCE = new Vector3(0.2, 0.3, -1);
  private static final Point3 ANCHOR = new Point3(0.3, -0.6, -0.4);

  private static RodSolution solve(
      Rotation frame, Vector3 curvature, Vector3 force, Point3 anchor) {
    RodLine line =
        new RodLine(
            RodPlace.onAxis(0, 0.7), new RodLine.FixedEnd(anchor), new RodLine.Constant(1.5));
    RodLoads loads =
        new RodLoads(
            List.of(new RodLoads.DeadForce(RodPlace.onAxis(0, 1), force)),
            List.of(),
            List.of(new SpanWeight(0, force, 0.4, -0.2, 0)),
            List.of(line));
    RodSolution solution =
        RodSolver.solve(
            Rods.single(frame, 1, curvature, Rods.tapered(0.3)), loads, RodOptions.DEFAULT);
    assertThat(solution.status().holds()).isTrue();
    return solution;
  }

  private static RodSolution asItIs() {
    return solve(Rods.rootFrame(0.4, 0), CURVATURE, FORCE, ANCHOR);
  }

  @Test
  void mirroredRod_bendsTheMirroredWay() {
    RodSolution plain = asItIs();
    RodSolution mirrored =
        solve(
            Rods.rootFrame(0.4, 0),
            new Vector3(CURVATURE.x(), -CURVATURE.y(), 0),
            new Vector3(FORCE.x(), -FORCE.y(), FORCE.z()),
            new Point3(ANCHOR.x(), -ANCHOR.y(), ANCHOR.z()));
    for (double s : new double[] {0.2, 0.7, 1}) {
      Point3 a = plain.pose().section(0, s).position();
      Point3 b = mirrored.pose().section(0, s).position();
      assertThat(b.distance(new Point3(a.x(), -a.y(), a.z()))).isLessThan(ROUNDING);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 1.9, -2.5})
  void turnedRod_bendsTheTurnedWay(double angle) {
    Rotation turn = Rotation.about(Direction3.of(1, -2, 0.5), angle);
    RodSolution plain = asItIs();
    RodSolution turned =
        solve(
            turn.after(Rods.rootFrame(0.4, 0)),
            CURVATURE,
            turn.turn(FORCE),
            Point3.ORIGIN.plus(turn.turn(ANCHOR.minus(Point3.ORIGIN))));
    for (double s : new double[] {0.2, 0.7, 1}) {
      Vector3 a = plain.pose().section(0, s).position().minus(Point3.ORIGIN);
      Point3 b = turned.pose().section(0, s).position();
      assertThat(b.distance(Point3.ORIGIN.plus(turn.turn(a)))).isLessThan(ROUNDING);
      double strain = plain.pose().section(0, s).addedCurvature();
      assertThat(turned.pose().section(0, s).addedCurvature()).isCloseTo(strain, within(ROUNDING));
    }
  }

  /** The same rod stated as one span or as many. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 7, 20})
  void finelyMeasuredRod_bendsAsTheCoarselyMeasuredOne(int pieces) {
    SectionLine sections = Rods.tapered(0.5);
    List<RodSpan> spans = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      double from = (double) i / pieces;
      spans.add(
          new RodSpan(
              i - 1,
              Vector3.ZERO,
              Rotation.NONE,
              1.0 / pieces,
              Vector3.ZERO,
              s -> sections.at(from + s)));
    }
    RodModel fine = RodModel.of(Point3.ORIGIN, Rods.rootFrame(0, 0), spans);
    RodLoads atEnd =
        RodLoads.ofForces(new RodLoads.DeadForce(RodPlace.onAxis(pieces - 1, 1.0 / pieces), FORCE));
    RodSolution split = RodSolver.solve(fine, atEnd, RodOptions.DEFAULT);
    RodSolution whole =
        RodSolver.solve(
            Rods.unit(0.5, Vector3.ZERO),
            Rods.tipForce(FORCE.x(), FORCE.y(), FORCE.z()),
            RodOptions.DEFAULT);
    for (int i = 0; i < pieces; i++) {
      RodSection a = split.pose().section(i, 0.5 / pieces);
      RodSection b = whole.pose().section(0, (i + 0.5) / pieces);
      assertThat(a.position().distance(b.position())).isLessThan(SAME);
      assertThat(a.addedCurvature())
          .isCloseTo(b.addedCurvature(), within(2 * RodOptions.DEFAULT.strainError()));
    }
  }

  /** A thousand times smaller in length, forces so that E stays: the same shape. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 1e3})
  void scaledRod_keepsItsShape(double scale) {
    SectionLine sections =
        s -> {
          double ei = Math.pow(scale, 4) * Math.pow(1 - 0.5 * s / scale, 4);
          return new LinearSection(ei, ei, 0.8 * ei);
        };
    Vector3 force = FORCE.times(scale * scale);
    RodSolution scaled =
        RodSolver.solve(
            Rods.single(Rods.rootFrame(0, 0), scale, Vector3.ZERO, sections),
            RodLoads.ofForces(new RodLoads.DeadForce(RodPlace.onAxis(0, scale), force)),
            RodOptions.DEFAULT);
    RodSolution unit =
        RodSolver.solve(
            Rods.unit(0.5, Vector3.ZERO),
            Rods.tipForce(FORCE.x(), FORCE.y(), FORCE.z()),
            RodOptions.DEFAULT);
    Vector3 a = scaled.pose().section(0, scale).position().minus(Point3.ORIGIN);
    Vector3 b = unit.pose().section(0, 1).position().minus(Point3.ORIGIN);
    assertThat(a.times(1 / scale).minus(b).norm()).isLessThan(ROUNDING);
  }

  /** P L^3 / (3 E I) and P L^2 / (2 E I): Gere and Timoshenko, Mechanics of Materials, app. G. */
  @Test
  void smallLoads_giveLinearBeamTheory() {
    double force = 1e-5;
    RodSolution solution =
        RodSolver.solve(
            Rods.unit(0, Vector3.ZERO), Rods.tipForce(0, 0, -force), RodOptions.DEFAULT);
    RodSection tip = solution.pose().section(0, 1);
    // what is left out is of the second order in the slope
    assertThat(-tip.position().z() / force * 3).isCloseTo(1, within(1e-8));
    double slope = -tip.frame().turn(new Vector3(0, 0, 1)).z();
    assertThat(slope / force * 2).isCloseTo(1, within(1e-8));
  }

  /** A line square to the rod with hardly any tension: T L^3 / (3 E I). */
  @Test
  void lineOfHardlyAnyTension_givesLinearBeamTheory() {
    double tension = 1e-5;
    RodLine line =
        new RodLine(
            RodPlace.onAxis(0, 1),
            new RodLine.FixedEnd(new Point3(1, 0, -2)),
            new RodLine.Constant(tension));
    RodSolution solution =
        RodSolver.solve(Rods.unit(0, Vector3.ZERO), RodLoads.ofLines(line), RodOptions.DEFAULT);
    double drop = -solution.pose().section(0, 1).position().z();
    assertThat(drop / tension * 3).isCloseTo(1, within(1e-8));
    double shortened = 2 - solution.lines().get(0).length();
    assertThat(shortened).isCloseTo(drop, within(1e-9));
  }
}
