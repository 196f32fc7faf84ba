// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.tree.Kind;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FrontDoubtTest {
  private static final FrontGrid COARSE =
      new FrontGrid(FrontRange.square(Math.toRadians(20)), 36, 2, 2);

  private static final FrontRules RULES = FrontRules.of(TreeStyle.UPRIGHT);

  private record Judged(Fronts fronts, FrontDoubt doubt) {
    boolean hasChoice() {
      return doubt.tellsSides(fronts);
    }
  }

  private static Judged judged(Stand stand) {
    FrontCase tree = new FrontCase(stand.skeleton(), List.of(), Optional.empty(), Eye.LEVEL, false);
    Fronts fronts =
        new FrontSearch(tree.gauge(), RULES, COARSE).run(FrontWatch.NOBODY).orElseThrow();
    return new Judged(fronts, FrontDoubt.of(tree, RULES, fronts));
  }

  @Test
  void straightStick_hasNoSideThatIsBetter() {
    Judged stick = judged(Stand.trunk(new Vector3(0, 0, 0.3), 0.04, 0.02));
    assertThat(stick.hasChoice()).isFalse();
    assertThat(stick.fronts().worst().unsaid())
        .contains(FrontMeasure.ROOT_BASE_WIDTH, FrontMeasure.TRUNK_MOVEMENT, FrontMeasure.DEPTH);
  }

  /** Twelve roots and twelve branches all round are the same from every side of the grid. */
  @Test
  void evenTree_hasNoSideThatIsBetter() {
    Stand even = Stand.trunk(new Vector3(0, 0, 0.15), 0.05, 0.04);
    even.add("t0", "t1", Kind.TRUNK, new Vector3(0, 0, 0.3), 0.04, 0.02);
    for (int n = 0; n < 12; n++) {
      Vector3 out = Direction3.ofAzimuth(n * Math.PI / 6).times(0.09);
      even.add("t0", "b" + n, Kind.BRANCH, out.plus(new Vector3(0, 0, 0.18)), 0.008, 0.006);
      even.addAt("t0", 0, "r" + n, Kind.ROOT, out.plus(new Vector3(0, 0, -0.01)), 0.02);
    }
    assertThat(judged(even).hasChoice()).isFalse();
  }

  @Test
  void crookedTree_hasOne_andIsTheFirstOfItself() {
    Judged crooked = judged(Stand.random(new Random(5)));
    assertThat(crooked.hasChoice()).isTrue();
    assertThat(crooked.doubt().fronts()).hasSize(crooked.fronts().fronts().size());
    assertThat(crooked.doubt().tells(crooked.fronts(), 0)).isFalse();
  }
}
