// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Own cases, invented, of wood that is soft in torsion, G = E / 16 (so GJ = EI / 8): curved and
 * kinked limbs in space, lines off the axis, to the ground and within the tree, hung and own
 * weight, rigid links; against {@link ShootingTree}. Sizes are those of a branch: some 300 mm long,
 * 12 mm thick, 5 GPa.
 */
class SoftTorsionTest {
  private static final Measured MEASURED = new Measured(SoftTorsionTest.class);
  private static final double MOE = 5e9;
  private static final double DENSITY = 1000 * 9.80665;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  /** A named case. */
  record Named(String name, RodCase rods) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static RodCase.Wood wood(double start, double end) {
    return new RodCase.Wood(start, end, MOE, MOE / 16);
  }

  private static final RodCase.Limb CURVED =
      RodCase.Limb.trunk(0.3, wood(0.006, 0.003), new Vector3(-2, 1.5, 0.5));

  private static final RodCase.Limb TRUNK =
      new RodCase.Limb(
          -1,
          0,
          new Vector3(0, 0, 0.01),
          Rotation.about(Direction3.of(1, 0.5, 0), 0.3),
          0.4,
          wood(0.009, 0.004),
          new Vector3(1, 0.5, 0));

  private static final RodCase.Limb SIDE =
      new RodCase.Limb(
          0,
          0.18,
          new Vector3(0.004, 0.002, 0.006),
          Rotation.about(Direction3.of(0.4, 1, 0), 0.9),
          0.28,
          wood(0.005, 0.002),
          new Vector3(0, -2, 0));

  private static final RodCase.Limb OTHER =
      new RodCase.Limb(
          0,
          0.3,
          new Vector3(-0.003, 0.003, 0.004),
          Rotation.about(Direction3.of(-1, 0.3, 0), 0.8),
          0.22,
          wood(0.0045, 0.002),
          new Vector3(1, 1, 0));

  private static RodCase.Pull pull(int limb, double s, Vector3 arm, Vector3 force) {
    return new RodCase.Pull(new RodCase.Place(limb, s, arm), force);
  }

  /** Density times area of the linear taper. */
  private static RodCase.Spread weight(int limb, RodCase.Limb rod, Vector3 down) {
    double a = rod.wood().start();
    double slope = (rod.wood().end() - a) / rod.length();
    double unit = Math.PI * DENSITY;
    return new RodCase.Spread(limb, down, unit * a * a, 2 * unit * a * slope, unit * slope * slope);
  }

  static Stream<Named> cases() {
    Rotation leaning = Rods.rootFrame(0.9, 0.5);
    Rotation level = Rods.rootFrame(0.1, 0);
    Point3 low = new Point3(0.1, -0.12, -0.1);
    Vector3 pad = new Vector3(0.004, 0.001, 0);
    Vector3 down = new Vector3(0, 0, -1);
    RodCase.Place tip = RodCase.Place.on(0, 0.3);
    RodCase.Place side = RodCase.Place.on(1, 0.28);
    RodCase.Tie toOther = new RodCase.Tie(side, null, RodCase.Place.on(2, 0.18), 4, Double.NaN, 0);
    RodCase.Tie toOtherByLength =
        new RodCase.Tie(side, null, new RodCase.Place(2, 0.22, pad), 4, 0.17, 0);
    List<RodCase.Limb> three = List.of(TRUNK, SIDE, OTHER);
    RodCase.Pull weight = pull(1, 0.2, Vector3.ZERO, down.times(4));
    return Stream.of(
        new Named(
            "curved limb, weight at the tip on an arm",
            RodCase.single(
                level,
                CURVED,
                List.of(pull(0, 0.3, new Vector3(0.02, 0, 0), down.times(9))),
                List.of())),
        new Named(
            "curved limb, line on the bark",
            RodCase.single(
                leaning,
                CURVED,
                List.of(),
                List.of(RodCase.Tie.tight(new RodCase.Place(0, 0.22, pad), low, 60)))),
        new Named(
            "curved limb, line by length and a weight",
            RodCase.single(
                leaning,
                CURVED,
                List.of(pull(0, 0.15, Vector3.ZERO, down.times(4))),
                List.of(RodCase.Tie.measured(tip, low, 20, 0.3)))),
        new Named(
            "own weight along curved limbs, gravity aslant",
            new RodCase(
                level,
                List.of(TRUNK, SIDE),
                List.of(),
                List.of(),
                List.of(
                    weight(0, TRUNK, new Vector3(90, 60, -150)),
                    weight(1, SIDE, new Vector3(90, 60, -150))))),
        new Named(
            "tree, line within it by tension, and a weight",
            new RodCase(leaning, three, List.of(weight), List.of(toOther), List.of())),
        new Named(
            "tree, lines to the ground and within it by length, weights",
            new RodCase(
                leaning,
                three,
                List.of(weight),
                List.of(toOtherByLength, RodCase.Tie.tight(RodCase.Place.on(0, 0.4), low, 16)),
                List.of(weight(0, TRUNK, down), weight(2, OTHER, down)))));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void softTorsion_inSpace_isWhereShootingPutsIt(Named named) {
    RodCase rods = named.rods();
    RodSolution solution = rods.solve();
    assertThat(solution.status().holds()).as(solution.status().toString()).isTrue();
    ShootingPose truth = new ShootingTree(rods).solve(8);
    for (int i = 0; i < rods.limbs().size(); i++) {
      double length = rods.limbs().get(i).length();
      double largest = largestAtUnions(rods, truth, i);
      double moved = 0;
      for (int k = 0; k <= 200; k++) {
        double s = length * k / 200;
        largest = Math.max(largest, truth.fibreStrain(i, s));
        double away =
            rods.section(solution.pose(), i, s).position().distance(truth.at(i, s).position());
        moved = Math.max(moved, away);
      }
      MEASURED.check("position / L", moved / length, Accuracy.POSITION);
      if (largest > 0) {
        Peak peak = Peak.of(rods, solution.pose(), i);
        MEASURED.check("strain", peak.strain() / largest - 1, Accuracy.STRAIN);
        MEASURED.check(
            "true strain at the place, short of the largest",
            1 - truth.fibreStrain(i, peak.s()) / largest,
            Accuracy.STRAIN);
      }
    }
    for (int k = 0; k < rods.ties().size(); k++) {
      double expected = truth.tension(k);
      MEASURED.check("tension", solution.lines().get(k).tension() / expected - 1, Accuracy.TENSION);
    }
  }

  private static double largestAtUnions(RodCase rods, ShootingPose truth, int limb) {
    return rods.limbs().stream()
        .filter(child -> child.parent() == limb)
        .mapToDouble(child -> truth.fibreStrain(limb, child.at()))
        .max()
        .orElse(0);
  }

  /** The cases are large bends: a check of small ones would say little. */
  @ParameterizedTest
  @MethodSource("cases")
  void softTorsionCases_bendFar(Named named) {
    RodCase rods = named.rods();
    RodSolution solution = rods.solve();
    RodPose rest = RodSolver.solve(rods.model(), RodLoads.NONE, RodOptions.DEFAULT).pose();
    double farthest = 0;
    for (int i = 0; i < rods.limbs().size(); i++) {
      double length = rods.limbs().get(i).length();
      RodSection tip = rods.section(solution.pose(), i, length);
      double moved = tip.position().distance(rods.section(rest, i, length).position());
      farthest = Math.max(farthest, moved / length);
    }
    assertThat(farthest).isGreaterThan(0.1);
  }
}
