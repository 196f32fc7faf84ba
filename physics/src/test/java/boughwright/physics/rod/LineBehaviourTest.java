// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines that hang loose, become tight or loose through other loads, and several lines at once. */
class LineBehaviourTest {
  /** Two solves of one state differ by no more than twice the error the solver aims at. */
  private static final double SAME = 2 * RodOptions.DEFAULT.positionError();

  private static final double SAME_TENSION = 2 * RodOptions.DEFAULT.tensionError();
  private static final RodPlace TIP = RodPlace.onAxis(0, 1);
  private static final Point3 ANCHOR = new Point3(0.4, 0.3, -0.7);
  private static final double STRAIGHT = new Point3(1, 0, 0).distance(ANCHOR);
  private static final RodModel ROD = Rods.unit(0.4, Vector3.ZERO);

  private static RodLine byLength(double length) {
    return new RodLine(TIP, new RodLine.FixedEnd(ANCHOR), new RodLine.Length(length, 0));
  }

  private static RodLine byTension(double tension) {
    return new RodLine(TIP, new RodLine.FixedEnd(ANCHOR), new RodLine.Constant(tension));
  }

  private static RodLoads with(Vector3 force, RodLine... lines) {
    return new RodLoads(
        List.of(new RodLoads.DeadForce(TIP, force)), List.of(), List.of(), List.of(lines));
  }

  private static RodSolution solve(RodLoads... stages) {
    RodSolution solution = RodSolver.solve(ROD, List.of(stages), RodOptions.DEFAULT);
    assertThat(solution.status().holds()).as(solution.status().toString()).isTrue();
    return solution;
  }

  private static Point3 tip(RodSolution solution) {
    return solution.pose().section(0, 1).position();
  }

  @Test
  void lineLongerThanItsDistance_carriesNothing() {
    RodSolution solution = solve(RodLoads.ofLines(byLength(1.2 * STRAIGHT)));
    assertThat(solution.lines().get(0).slack()).isTrue();
    assertThat(solution.lines().get(0).tension()).isZero();
    assertThat(tip(solution).distance(new Point3(1, 0, 0))).isLessThan(1e-12);
  }

  /** A person who shortens by nothing gives the straight distance, to rounding. */
  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, -1e-13, -1e-15, 0, 1e-15, 1e-13, 1e-9})
  void lineAsLongAsItsDistance_hardlyPulls(double more) {
    RodSolution solution = solve(RodLoads.ofLines(byLength((1 + more) * STRAIGHT)));
    assertThat(solution.lines().get(0).tension()).isBetween(0.0, 1e-7);
    assertThat(tip(solution).distance(new Point3(1, 0, 0))).isLessThan(1e-7);
  }

  /** One of two lines takes the load; the other hangs loose though it was the tight one before. */
  @Test
  void tightLine_thatAnotherLineLetsLoose_carriesNothing() {
    Point3 beyond = new Point3(0.2, 0.6, -0.6);
    RodLine loose = byLength(0.95 * STRAIGHT);
    double straight = new Point3(1, 0, 0).distance(beyond);
    RodLine.FixedEnd end = new RodLine.FixedEnd(beyond);
    RodLine slack = new RodLine(TIP, end, new RodLine.Length(straight, 0));
    RodLine tight = new RodLine(TIP, end, new RodLine.Length(0.5 * straight, 0));
    RodSolution alone = solve(RodLoads.ofLines(tight));
    assertThat(tip(alone).distance(ANCHOR)).isLessThan(0.94 * STRAIGHT);
    RodSolution both = solve(RodLoads.ofLines(loose, slack), RodLoads.ofLines(loose, tight));
    assertThat(both.lines().get(0).slack()).isTrue();
    assertThat(both.lines().get(1).tension()).isPositive();
    assertThat(tip(both).distance(tip(alone))).isLessThan(SAME);
  }

  @Test
  void slackLine_thatAnotherLoadPullsTight_holdsAsIfGivenItsTension() {
    Vector3 away = new Vector3(0, -0.5, 0.8);
    double length = 1.1 * STRAIGHT;
    assertThat(tip(solve(with(away))).distance(ANCHOR)).isGreaterThan(1.1 * length);
    RodSolution held = solve(with(away, byLength(length)));
    RodSolution.LineState line = held.lines().get(0);
    assertThat(line.slack()).isFalse();
    assertThat(line.tension()).isPositive();
    assertThat(line.length()).isCloseTo(length, within(SAME));
    RodSolution same = solve(with(away, byTension(line.tension())));
    assertThat(tip(same).distance(tip(held))).isLessThan(SAME);
  }

  /** The weight alone brings the tip nearer to the anchor than the line is long. */
  @ParameterizedTest
  @ValueSource(doubles = {0.99999, 0.999, 0.99, 0.97, 0.95, 0.9})
  void tightLine_thatAnotherLoadLetsLoose_carriesNothing(double part) {
    Vector3 toward = new Vector3(-0.3, 0.6, -1.4);
    Point3 alone = tip(solve(with(toward)));
    assertThat(alone.distance(ANCHOR)).isLessThan(0.85 * STRAIGHT);
    RodLine line = byLength(part * STRAIGHT);
    RodSolution together = solve(with(toward, line));
    RodSolution afterwards = solve(RodLoads.ofLines(line), with(toward, line));
    for (RodSolution solution : List.of(together, afterwards)) {
      assertThat(solution.lines().get(0).slack()).isTrue();
      assertThat(solution.lines().get(0).tension()).isZero();
      assertThat(tip(solution).distance(alone)).isLessThan(SAME);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.95, 0.8, 0.6, 0.4})
  void stateReachedByLength_isTheOneReachedByTension(double part) {
    RodSolution byLength = solve(RodLoads.ofLines(byLength(part * STRAIGHT)));
    double tension = byLength.lines().get(0).tension();
    RodSolution byTension = solve(RodLoads.ofLines(byTension(tension)));
    assertThat(tip(byTension).distance(tip(byLength))).isLessThan(SAME);
    assertThat(byTension.lines().get(0).length()).isCloseTo(part * STRAIGHT, within(SAME));
  }

  /**
   * A column beyond Euler's load stands as long as a stay by length holds it from falling one way;
   * the stay never pulls, so the column's weight lets it fall the other way.
   */
  @Test
  void columnBeyondItsLoad_withASlackStay_isReportedToFall() {
    RodModel column = Rods.single(Rods.rootFrame(Math.PI / 2, 0), 1, Vector3.ZERO, Rods.tapered(0));
    RodLine stay =
        new RodLine(TIP, new RodLine.FixedEnd(new Point3(-1, 0, 0)), new RodLine.Length(1.5, 0));
    RodStatus status =
        RodSolver.solve(column, with(new Vector3(0, 0, -3), stay), RodOptions.DEFAULT).status();
    assertThat(status.holds()).isFalse();
    assertThat(status.unstableModes()).isEqualTo(2);
    assertThat(status.reason()).contains("jumps or falls");
  }

  @Test
  void lineThatStretches_isLongerByItsCompliance() {
    double rest = 0.8 * STRAIGHT;
    double compliance = 0.05;
    RodLine line =
        new RodLine(TIP, new RodLine.FixedEnd(ANCHOR), new RodLine.Length(rest, compliance));
    RodSolution.LineState found = solve(RodLoads.ofLines(line)).lines().get(0);
    assertThat(found.tension()).isPositive();
    assertThat(found.length()).isCloseTo(rest + compliance * found.tension(), within(SAME));
  }

  /** A line of constant tension pulls like the dead force it exerts in the end. */
  @Test
  void severalLines_holdTheSamePoseAsTheForcesTheyExert() {
    RodPlace middle = RodPlace.onAxis(0, 0.6);
    RodLine beside =
        new RodLine(
            middle, new RodLine.FixedEnd(new Point3(0.5, -0.8, 0)), new RodLine.Length(0.75, 0));
    RodLine slack =
        new RodLine(
            middle, new RodLine.FixedEnd(new Point3(0.5, 0, 0.9)), new RodLine.Length(1.6, 0));
    RodLine own =
        new RodLine(TIP, new RodLine.MovingEnd(RodPlace.onAxis(0, 0.3)), new RodLine.Constant(0.4));
    RodSolution held = solve(RodLoads.ofLines(byTension(0.8), beside, slack, own));
    assertThat(held.lines().get(2).slack()).isTrue();
    assertThat(held.lines().get(1).length()).isCloseTo(0.75, within(SAME));
    List<RodLoads.DeadForce> forces = new ArrayList<>();
    List<RodPlace> places = List.of(TIP, middle, middle, TIP);
    for (int i = 0; i < 4; i++) {
      RodSolution.LineState line = held.lines().get(i);
      Vector3 pull = line.other().minus(line.at()).times(line.tension() / line.length());
      forces.add(new RodLoads.DeadForce(places.get(i), pull));
      if (i == 3) {
        forces.add(new RodLoads.DeadForce(RodPlace.onAxis(0, 0.3), pull.times(-1)));
      }
    }
    RodSolution same = solve(RodLoads.ofForces(forces.toArray(RodLoads.DeadForce[]::new)));
    assertThat(tip(same).distance(tip(held))).isLessThan(SAME);
  }

  @Test
  void orderOfLines_doesNotMatter() {
    RodLine other =
        new RodLine(
            RodPlace.onAxis(0, 0.5),
            new RodLine.FixedEnd(new Point3(0.3, -0.5, 0.2)),
            new RodLine.Length(0.5, 0));
    RodLine first = byLength(0.8 * STRAIGHT);
    RodSolution a = solve(RodLoads.ofLines(first, other));
    RodSolution b = solve(RodLoads.ofLines(other, first));
    assertThat(tip(a).distance(tip(b))).isLessThan(SAME);
    double ratio = a.lines().get(0).tension() / b.lines().get(1).tension();
    assertThat(ratio).isCloseTo(1, within(SAME_TENSION));
  }
}
