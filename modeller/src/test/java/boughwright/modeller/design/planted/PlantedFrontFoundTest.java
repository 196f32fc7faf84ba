// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.design.front.Eye;
import boughwright.modeller.design.front.FrontGauge;
import boughwright.modeller.design.front.FrontGrid;
import boughwright.modeller.design.front.FrontRange;
import boughwright.modeller.design.front.FrontRules;
import boughwright.modeller.design.front.FrontSubject;
import boughwright.modeller.design.front.FrontSweep;
import boughwright.modeller.design.front.FrontWatch;
import boughwright.modeller.design.front.Fronts;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.tree.Skeleton;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The scorer finds fronts that were hidden by a generator which knows nothing of it. How often it
 * must is what issue 6 asks for.
 */
class PlantedFrontFoundTest {
  private static final double NEAR = Math.toRadians(10);
  private static final int AS_ONE_OF_FIVE = 95;
  private static final int AS_FIRST = 70;

  /**
   * Every 5 degrees of azimuth, with few tilts: as fine as needed to come within 10, and so coarse
   * that every pose is looked at. That a search finds the same is for FrontSearchTest to say.
   */
  private static final FrontGrid GRID =
      new FrontGrid(FrontRange.square(Math.toRadians(24)), 72, 1, 2);

  private static Fronts found(PlantedFront planted) {
    WoodLeft wood = new WoodLeft(new Skeleton(planted.tree()));
    FrontSubject subject = FrontSubject.bare(wood, TrunkLine.of(wood, Optional.empty()));
    FrontGauge gauge = new FrontGauge(subject, Eye.LEVEL);
    return new FrontSweep(gauge, FrontRules.of(TreeStyle.UPRIGHT), GRID)
        .run(FrontWatch.NOBODY)
        .orElseThrow();
  }

  private static boolean isNear(double azimuth, double other) {
    return Math.abs(Math.IEEEremainder(azimuth - other, 2 * Math.PI)) <= NEAR;
  }

  @Test
  void hiddenFronts_areFound() {
    List<PlantedFront> trees = PlantedFront.hundred();
    int five = 0;
    int first = 0;
    for (PlantedFront planted : trees) {
      List<Double> azimuths =
          found(planted).fronts().stream().map(front -> front.pose().azimuth()).toList();
      assertThat(azimuths).hasSize(Fronts.MOST);
      five += azimuths.stream().anyMatch(a -> isNear(a, planted.azimuth())) ? 1 : 0;
      first += isNear(azimuths.get(0), planted.azimuth()) ? 1 : 0;
    }
    assertThat(trees).hasSize(100);
    assertThat(five).as("as one of five, of 100").isGreaterThanOrEqualTo(AS_ONE_OF_FIVE);
    assertThat(first).as("as the first, of 100").isGreaterThanOrEqualTo(AS_FIRST);
  }
}
