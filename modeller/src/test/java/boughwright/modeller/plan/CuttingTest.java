// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import static boughwright.modeller.tree.Sticks.on;
import static boughwright.modeller.tree.Sticks.tree;
import static boughwright.modeller.tree.Sticks.trunk;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CuttingTest {
  /** Trunk t with branch b at half its length, twig c at the end of b, twig d at 0.3 of b. */
  private static final Skeleton TREE =
      new Skeleton(
          tree(
              trunk("t"),
              on("t", 0.5, "b", Kind.BRANCH, new Point3(0.1, 0, 0.05)),
              on("b", 1, "c", Kind.BRANCH, new Point3(0.2, 0, 0.05)),
              on("b", 0.3, "d", Kind.BRANCH, new Point3(0.03, 0.1, 0.05))));

  private static Cutting cut(Spot... cuts) {
    return new Cutting(TREE, List.of(cuts));
  }

  @Test
  void noCut_leavesEverything() {
    assertThat(cut().holds(new Spot("c", 1))).isTrue();
    assertThat(cut().left(1)).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({
    "b, 0.4, true",
    "b, 0.5, true",
    "b, 0.51, false",
    "c, 0, false",
    "d, 1, true",
    "t, 1, true"
  })
  void cut_takesWhatLiesBeyond(String segment, double along, boolean left) {
    assertThat(cut(new Spot("b", 0.5)).holds(new Spot(segment, along))).isEqualTo(left);
  }

  @Test
  void cutAtTheStart_takesTheWholeSegment() {
    Cutting cutting = cut(new Spot("b", 0));
    assertThat(cutting.isGone(1)).isTrue();
    assertThat(cutting.isGone(2)).isTrue();
    assertThat(cutting.isGone(3)).isTrue();
    assertThat(cutting.holds(new Spot("b", 0))).isFalse();
  }

  @Test
  void cutAtTheEnd_takesWhatGoesOnFromThere() {
    Cutting cutting = cut(new Spot("b", 1));
    assertThat(cutting.left(1)).isEqualTo(1);
    assertThat(cutting.isGone(2)).isTrue();
    assertThat(cutting.isGone(3)).isFalse();
  }

  @Test
  void twoCutsOnOneSegment_countAsTheLowerOne() {
    assertThat(cut(new Spot("b", 0.8), new Spot("b", 0.2), new Spot("b", 0.6)).left(1))
        .isEqualTo(0.2);
  }

  @Test
  void cutOnUnknownSegment_isRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> cut(new Spot("x", 0)));
  }
}
