// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The families of cases of the other tests on wood that flows: lines by tension, by length and
 * stretching, branching rods, soft torsion in space, own weight; against {@link ShootingTree} with
 * a moment-curvature relation integrated apart ({@link FibreBending}). Flow begins at a part of the
 * strain that straight-line wood would have: one and a half, just over two, and three times less.
 */
class RealWoodTest {
  private static final Measured MEASURED = new Measured(RealWoodTest.class);
  private static final double[] DEPTHS = {1.5, 2.2, 3};

  /**
   * Lines by tension that such wood cannot hold any more: they pull the branch over before the
   * whole tension is on.
   */
  private static final Set<String> PULLED_OVER =
      Set.of(
          "d1 T=4.0, 3.0",
          "d2 T=15.0, 3.0",
          "d3 T=35.0, 3.0",
          "d4 T=8.0, 3.0",
          "d5 T=10.0, 3.0",
          "d6 T=20.0, 3.0",
          "curved limb, line on the bark, 2.2",
          "curved limb, line on the bark, 3.0");

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  /** A case on wood that flows. */
  record Named(String name, RodCase rods) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Stream<Named> all() {
    Stream<Named> lines =
        Table.of("d_line_cases.csv").map(row -> new Named(row.toString(), GuyLines.of(row)));
    Stream<Named> trees =
        BranchingTableTest.rows().map(row -> new Named(row.toString(), row.rods()));
    Stream<Named> soft = SoftTorsionTest.cases().map(c -> new Named(c.name(), c.rods()));
    return Stream.of(lines, trees, soft).flatMap(s -> s).flatMap(RealWoodTest::flowing);
  }

  private static Stream<Named> flowing(Named elastic) {
    RodPose pose = elastic.rods().solve().pose();
    double peak = peak(elastic.rods(), pose);
    List<Named> out = new ArrayList<>();
    for (double depth : DEPTHS) {
      String name = elastic.name().strip() + ", " + depth;
      out.add(new Named(name, elastic.rods().flowingFrom(peak / depth)));
    }
    return out.stream();
  }

  private static double peak(RodCase rods, RodPose pose) {
    double peak = 0;
    for (int i = 0; i < rods.limbs().size(); i++) {
      peak = Math.max(peak, Peak.of(rods, pose, i).strain());
    }
    return peak;
  }

  static Stream<Named> held() {
    return all().filter(c -> !PULLED_OVER.contains(c.name()));
  }

  static Stream<Named> pulledOver() {
    return all().filter(c -> PULLED_OVER.contains(c.name()));
  }

  @ParameterizedTest
  @MethodSource("held")
  void realWood_isWhereShootingPutsIt(Named named) {
    RodCase rods = named.rods();
    RodSolution solution = rods.solve();
    assertThat(solution.status().holds()).as(solution.status().toString()).isTrue();
    ShootingPose truth = new ShootingTree(rods).polish(guess(rods, solution));
    double worst = 0;
    for (int i = 0; i < rods.limbs().size(); i++) {
      double length = rods.limbs().get(i).length();
      for (int k = 0; k <= 40; k++) {
        double s = length * (k / 40.0);
        double away =
            rods.section(solution.pose(), i, s).position().distance(truth.at(i, s).position());
        MEASURED.check("position / L", away / length, Accuracy.POSITION);
      }
      Peak peak = Peak.of(rods, solution.pose(), i);
      worst = Math.max(worst, peak.strain() / rods.limbs().get(i).wood().yield());
      if (peak.strain() > 0) {
        double there = truth.fibreStrain(i, peak.s());
        MEASURED.check("strain at the worst place", peak.strain() / there - 1, Accuracy.STRAIN);
      }
    }
    assertThat(worst).as("flows").isGreaterThan(1.4);
    for (int k = 0; k < rods.ties().size(); k++) {
      MEASURED.check(
          "tension", solution.lines().get(k).tension() / truth.tension(k) - 1, Accuracy.TENSION);
    }
  }

  /** Force and moment at the start of every limb, and the force of every line, to start from. */
  private static double[] guess(RodCase rods, RodSolution solution) {
    List<Vector3> parts = new ArrayList<>();
    for (int i = 0; i < rods.limbs().size(); i++) {
      RodSection start = rods.section(solution.pose(), i, 0);
      parts.add(start.frame().turn(start.force()));
      parts.add(start.frame().turn(start.moment()));
    }
    for (RodSolution.LineState line : solution.lines()) {
      Vector3 along = line.other().minus(line.at());
      parts.add(along.times(line.tension() / along.norm()));
    }
    return parts.stream().flatMapToDouble(v -> DoubleStream.of(v.x(), v.y(), v.z())).toArray();
  }

  @ParameterizedTest
  @MethodSource("held")
  void realWood_isReachedByEitherRoute(Named named) {
    RodCase rods = named.rods();
    RodOptions direct = RodOptions.DEFAULT.withRoute(RodOptions.Route.DIRECT);
    RodSolution down = RodSolver.solve(rods.model(), rods.loads(), direct);
    assertThat(down.status().holds()).as(down.status().toString()).isTrue();
    RodSolution followed = rods.solve();
    for (int i = 0; i < rods.limbs().size(); i++) {
      double length = rods.limbs().get(i).length();
      double away =
          rods.section(down.pose(), i, length)
              .position()
              .distance(rods.section(followed.pose(), i, length).position());
      MEASURED.check("one route against the other / L", away / length, Accuracy.POSITION);
    }
  }

  @ParameterizedTest
  @MethodSource("pulledOver")
  void realWood_thatALineWouldPullOver_isRefusedWithPlaceAndReason(Named named) {
    RodSolution solution = named.rods().solve();
    assertThat(solution.status().holds()).isFalse();
    assertThat(solution.status().part()).isBetween(0.6, 0.99);
    assertThat(solution.status().reason()).contains("jumps or falls away");
    assertThat(solution.pose().section(0, 0).strain().norm()).isFinite();
  }
}
