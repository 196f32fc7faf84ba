// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.rod.Measured;
import boughwright.physics.rod.SectionResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** What round sections remember, against {@link BruteSection} loaded in small steps. */
class SectionMemoryTest {
  private static final Measured MEASURED = new Measured(SectionMemoryTest.class);
  private static final SegmentWood UNIT = new SegmentWood(1, 0.0625, 1, "test");
  private static final int STEPS = 20;

  /** Part of the moment where flow begins, 4 / pi of it: the raster and the fibres' number. */
  private static final double SAME = 5e-3;

  private final SectionResponse response = new SectionResponse();
  private final BruteSection brute = new BruteSection(250, (p1, p2) -> BruteSection.GREEN);
  private double e1;
  private double e2;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private BruteSection.Bent brute(double to1, double to2) {
    BruteSection.Bent bent = null;
    for (int k = 1; k <= STEPS; k++) {
      double part = (double) k / STEPS;
      bent = brute.bendTo(e1 + part * (to1 - e1), e2 + part * (to2 - e2));
    }
    e1 = to1;
    e2 = to2;
    return bent;
  }

  private void compare(String kind, WoodSection law, BruteSection.Bent bent) {
    law.respond(e1, e2, 0, response);
    MEASURED.check(kind, response.m1 - bent.m1(), SAME);
    MEASURED.check(kind, response.m2 - bent.m2(), SAME);
  }

  @Test
  void stages_inOnePlane_areThoseOfFibresInSmallSteps() {
    WoodSection law = new FreshDisc(UNIT, 1);
    for (double x : new double[] {4, 2, 0.7, 3, 5, 1, -2, 0, 4}) {
      compare("stages in a plane", law, brute(x, 0));
      law = law.bentTo(x, 0);
    }
  }

  @Test
  void stages_inSpace_areThoseOfFibresInSmallSteps() {
    WoodSection law = new FreshDisc(UNIT, 1);
    double[][] stages = {{3, 0}, {1.5, 0}, {2, 2}, {0.5, 0.5}, {-1, 3}, {-0.4, 1}};
    for (double[] stage : stages) {
      compare("stages in space", law, brute(stage[0], stage[1]));
      law = law.bentTo(stage[0], stage[1]);
    }
  }

  @Test
  void oneStage_isTwentySmallOnes() {
    WoodSection fresh = new FreshDisc(UNIT, 1);
    WoodSection small = fresh;
    for (int k = 1; k <= 20; k++) {
      small = small.bentTo(0.25 * k, 0.1 * k);
    }
    WoodSection whole = fresh.bentTo(5, 2);
    for (double part : new double[] {1, 0.8, 0.3, 0}) {
      whole.respond(5 * part, 2 * part, 0, response);
      double m1 = response.m1;
      double m2 = response.m2;
      small.respond(5 * part, 2 * part, 0, response);
      MEASURED.check("one stage against twenty", response.m1 - m1, SAME);
      MEASURED.check("one stage against twenty", response.m2 - m2, SAME);
    }
  }

  @Test
  void unloading_isElasticAndReloading_comesBackToTheFreshLaw() {
    WoodSection fresh = new FreshDisc(UNIT, 1);
    WoodSection bent = fresh.bentTo(5, 0);
    bent.respond(4.9, 0, 0, response);
    assertThat(response.k11).isCloseTo(Math.PI / 4, within(SAME));
    // across, the tangent is that of few fibres beside the neutral axis
    assertThat(response.k22).isCloseTo(Math.PI / 4, within(0.03));
    double set = bent.strainUnder(0, 0, 0)[0];
    fresh.respond(5, 0, 0, response);
    double moment = response.m1;
    // elastic release from 5: the set is what is left
    assertThat(set).isCloseTo(5 - moment / (Math.PI / 4), within(0.02 * set));
    assertThat(bent.strainUnder(moment, 0, 0)[0]).isCloseTo(5, within(1e-6));
    bent.respond(6, 0, 0, response);
    double again = response.m1;
    fresh.respond(6, 0, 0, response);
    assertThat(again).isCloseTo(response.m1, within(1e-10));
  }

  @Test
  void closedCycle_givesBackNoMoreThanItTook() {
    WoodSection fresh = new FreshDisc(UNIT, 1);
    double work = work(fresh, 0, 4);
    WoodSection bent = fresh.bentTo(4, 0);
    double back = work(bent, 4, -2);
    WoodSection reversed = bent.bentTo(-2, 0);
    double rest = work(reversed, -2, 0);
    assertThat(work + back + rest).isPositive();
    // going nowhere new costs nothing
    assertThat(work(bent, 4, 1) + work(bent.bentTo(1, 0), 1, 4)).isCloseTo(0, within(1e-9));
  }

  private double work(WoodSection law, double from, double to) {
    law.respond(from, 0, 0, response);
    double before = response.energy;
    law.respond(to, 0, 0, response);
    return response.energy - before;
  }

  @Test
  void aSectionThatNeverFlowed_remembersNothing() {
    WoodSection fresh = new FreshDisc(UNIT, 1);
    assertThat(fresh.bentTo(0.7, 0.7)).isSameAs(fresh);
  }
}
