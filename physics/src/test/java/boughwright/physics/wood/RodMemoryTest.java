// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.physics.rod.Measured;
import boughwright.physics.rod.RodLoads;
import boughwright.physics.rod.RodModel;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.rod.RodPlace;
import boughwright.physics.rod.RodSolution;
import boughwright.physics.rod.RodSolver;
import boughwright.physics.rod.RodSpan;
import boughwright.physics.rod.RodStart;
import boughwright.physics.rod.SectionLine;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a rod keeps of a bend when it is let go, against {@link BruteSection} place by place: the
 * curvature that is left, summed to turns and to the place of the tip. E = 1, sections of radius 1,
 * flow from a strain of 1 %, so that the rod of length 60 bends far.
 */
class RodMemoryTest {
  private static final Measured MEASURED = new Measured(RodMemoryTest.class);
  private static final double YIELD = 0.01;

  /** Stiff in torsion: a moment of constant axis has no potential, and would twist soft wood. */
  private static final SegmentWood WOOD = new SegmentWood(1, 10, YIELD, "test");

  private static final double LENGTH = 60;
  private static final double STIFFNESS = Math.PI / 4;
  private static final double FIRST = STIFFNESS * YIELD;

  /** Raster of 100 rows and the fibres' number, of the turn and of the way kept. */
  private static final double KEPT = 1e-2;

  /** As all positions: deep in flow, what is remembered is known no better than the strain. */
  private static final double AGAIN = 1e-4;

  private static final int PLACES = 60;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private static RodModel model(WoodLine line) {
    Rotation level =
        Rotation.toAxes(Direction3.of(0, 1, 0), Direction3.of(0, 0, 1), Direction3.of(1, 0, 0));
    return RodModel.of(
        Point3.ORIGIN,
        level,
        List.of(
            new RodSpan(RodSpan.CLAMP, Vector3.ZERO, Rotation.NONE, LENGTH, Vector3.ZERO, line)));
  }

  private static WoodLine fresh() {
    return WoodLine.round(WOOD, new SectionLine.RadiusTaper(1, 1, LENGTH));
  }

  private static RodLoads moment(double size) {
    RodLoads.DeadMoment moment =
        new RodLoads.DeadMoment(RodPlace.onAxis(0, LENGTH), new Vector3(0, size, 0));
    return new RodLoads(List.of(), List.of(moment), List.of(), List.of());
  }

  private static RodLoads force(double size) {
    return RodLoads.ofForces(
        new RodLoads.DeadForce(RodPlace.onAxis(0, LENGTH), new Vector3(0, 0, -size)));
  }

  private static RodSolution after(RodSolution held, RodLoads under, RodLoads to) {
    WoodLine remembered = new RememberedLine(fresh(), held.pose(), 0, Spell.NONE);
    RodSolution next =
        RodSolver.solve(model(remembered), new RodStart(held, under), to, RodOptions.DEFAULT);
    assertThat(next.status().holds()).as(next.status().toString()).isTrue();
    return next;
  }

  /** Curvature left where a moment was, both in those where flow begins. */
  private static double left(double moment) {
    if (moment <= 1) {
      return 0;
    }
    BruteSection section = new BruteSection(100, (p1, p2) -> BruteSection.GREEN);
    double low = 1;
    double high = 60;
    for (int n = 0; n < 40; n++) {
      double middle = (low + high) / 2;
      boolean less = FibreIntegral.DISC.at(middle).moment() / STIFFNESS < moment;
      low = less ? middle : low;
      high = less ? high : middle;
    }
    double curvature = low;
    double held = section.bendTo(curvature, 0).m1();
    for (int n = 0; n < 3; n++) {
      curvature -= held / STIFFNESS;
      held = section.bendTo(curvature, 0).m1();
    }
    return curvature;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.9, 1.3, 2, 2.8})
  void endMoment_letGo_leavesTheTurnOfItsFibres(double moment) {
    RodLoads loads = moment(moment * FIRST);
    RodSolution held = RodSolver.solve(model(fresh()), loads, RodOptions.DEFAULT);
    assertThat(held.status().holds()).isTrue();
    RodSolution free = after(held, loads, moment(0));
    double kept = Math.abs(free.pose().section(0, LENGTH / 2).strain().norm()) / YIELD;
    double expected = left(moment);
    MEASURED.check("end moment, curvature kept", kept - expected, KEPT * Math.max(1, expected));
  }

  @ParameterizedTest
  @ValueSource(doubles = {2, 2.6, 3.1})
  void cantilever_letGo_leavesTheTipWhereItsFibresPutIt(double moment) {
    RodLoads loads = force(moment * FIRST / LENGTH);
    RodSolution held = RodSolver.solve(model(fresh()), loads, RodOptions.DEFAULT);
    assertThat(held.status().holds()).isTrue();
    RodSolution free = after(held, loads, force(0));
    double turn = 0;
    double x = 0;
    double z = 0;
    double step = LENGTH / PLACES;
    for (int k = 0; k < PLACES; k++) {
      double here = held.pose().moment(0, (k + 0.5) * step).norm() / FIRST;
      double bend = YIELD * left(here) * step;
      x += Math.cos(turn + bend / 2) * step;
      z -= Math.sin(turn + bend / 2) * step;
      turn += bend;
    }
    Point3 tip = free.pose().section(0, LENGTH).position();
    assertThat(-z / LENGTH).isGreaterThan(1e-3);
    MEASURED.check("cantilever, way kept", tip.distance(new Point3(x, 0, z)) / -z, KEPT);
  }

  @ParameterizedTest
  @ValueSource(doubles = {2, 2.6, 2.9})
  void loadBroughtOnAgain_findsTheFirstPose(double moment) {
    RodLoads loads = force(moment * FIRST / LENGTH);
    RodSolution held = RodSolver.solve(model(fresh()), loads, RodOptions.DEFAULT);
    RodSolution free = after(held, loads, force(0));
    WoodLine twice =
        new RememberedLine(
            new RememberedLine(fresh(), held.pose(), 0, Spell.NONE), free.pose(), 0, Spell.NONE);
    RodSolution again =
        RodSolver.solve(model(twice), new RodStart(free, force(0)), loads, RodOptions.DEFAULT);
    assertThat(again.status().holds()).isTrue();
    double away =
        again
            .pose()
            .section(0, LENGTH)
            .position()
            .distance(held.pose().section(0, LENGTH).position());
    MEASURED.check("drawn in again, position / L", away / LENGTH, AGAIN);
  }
}
