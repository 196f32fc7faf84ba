// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Gauges;
import boughwright.modeller.plan.Material;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WireChoiceTest {
  /** The hardest section looked at is the middle of the first sixth of the branch. */
  private static final double ARM = 1 - 1.0 / 12;

  /** What small deflection theory and sums over strips leave. */
  private static final double STRIPS = 0.02;

  private static final double MOVE = 0.02;

  @TempDir Path folder;

  private WireChoice choice(String wood) {
    TrialRequest request =
        Wired.with(Wired.branch(folder, wood, 9, 9), List.of(), List.of(Wired.hand("t", 1, MOVE)));
    List<WireChoice> all = WireChoice.of(request);
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  /** Pull of an elastic cantilever, 3 E I d / L^2 at its start (Gere and Timoshenko; memory). */
  private static double pull() {
    double inertia = Math.PI / 4 * Math.pow(4.5e-3, 4);
    return 3 * 4e9 * inertia * MOVE / (Wired.LENGTH * Wired.LENGTH) * ARM;
  }

  /**
   * Moment of a strand of aluminium 1050-O, wound at 50 degrees on 9 mm, when its surface strains a
   * further hundredth: stress 135 MPa times strain to the 0.2 over the section, in strips.
   */
  private static double strand(double gauge) {
    double sin = Math.sin(Math.toRadians(50));
    double wound = gauge * sin * sin / (9e-3 + gauge);
    double sum = 0;
    int strips = 400;
    for (int i = 0; i < strips; i++) {
      for (int j = 0; j < strips; j++) {
        double across = (i + 0.5) / strips;
        double in = (j + 0.5) / strips;
        if (across * across + in * in < 1) {
          double strain = wound * in + 0.01 * across;
          sum += Math.max(30e6, 135e6 * Math.pow(strain, 0.2)) * across;
        }
      }
    }
    return 4 * sum * Math.pow(gauge / 2, 3) / (strips * strips);
  }

  @Test
  void chosenGauge_isTheThinnestSoldThatStandsThePullOfTheWood() {
    WireChoice.Row row = choice(Wired.ELASTIC).row(Material.ALUMINIUM, 2).orElseThrow();
    double gauge = row.gauge().orElseThrow();
    List<Double> sold = Gauges.sold(Material.ALUMINIUM);
    double thinner = sold.get(sold.indexOf(gauge) - 1);
    assertThat(2 * strand(gauge)).isGreaterThan(pull());
    assertThat(2 * strand(thinner)).isLessThan(pull());
    double strength = 2 * strand(gauge) / pull();
    assertThat(row.strength()).isCloseTo(strength, within(3 * STRIPS * strength));
  }

  @Test
  void moreStrands_mayBeThinner() {
    WireChoice choice = choice(Wired.ELASTIC);
    for (Material metal : List.of(Material.ALUMINIUM, Material.COPPER_ANNEALED)) {
      double before = Double.POSITIVE_INFINITY;
      for (int strands = 1; strands <= 3; strands++) {
        double gauge =
            choice.row(metal, strands).orElseThrow().gauge().orElse(Double.POSITIVE_INFINITY);
        assertThat(gauge).isLessThanOrEqualTo(before);
        before = gauge;
      }
      assertThat(before).isFinite();
    }
    assertThat(choice.rows()).hasSize(12);
    assertThat(choice.byRule()).isCloseTo(3e-3, within(1e-9));
    assertThat(choice.alone()).isCloseTo(0, within(1e-6));
  }

  @Test
  void handGoesFurther_thanTheBranchIsToRest() {
    WireChoice choice = choice(Wired.GREEN);
    WireChoice.Row row = choice.simplest(Material.COPPER_ANNEALED).orElseThrow();
    assertThat(row.hand().orElseThrow()).isBetween(MOVE, 4 * MOVE);
  }

  @Test
  void bendWithoutHands_asksForNoWire() {
    assertThat(WireChoice.of(Wired.branch(folder, Wired.GREEN, 9, 9))).isEmpty();
  }
}
