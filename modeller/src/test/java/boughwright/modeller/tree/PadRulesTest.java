// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PadRulesTest {
  private static Pad pad(String segment, double length, double thickness, double raised) {
    return new Pad("f1", segment, 0.5, length, 0.04, thickness, raised, Map.of());
  }

  private static List<String> kinds(Pad... pads) {
    return PadRules.findings(List.of("b"), List.of(pads)).stream().map(Finding::kind).toList();
  }

  @Test
  void usualPad_isNotQuestioned() {
    assertThat(kinds(pad("b", 0.09, 0.03, 0.01))).isEmpty();
  }

  @Test
  void oddPads_areQuestioned() {
    assertThat(kinds(pad("b", 90, 0.03, 0))).containsExactly("odd-pad-size");
    assertThat(kinds(pad("b", 0.05, 0.2, 0))).containsExactly("pad-on-edge");
    assertThat(kinds(pad("b", 0.05, 0.03, -0.3))).containsExactly("pad-afloat");
  }

  @Test
  void tree_refusesPads_thatDoNotFitIt() {
    Tree tree = Sticks.tree(Sticks.trunk("t"));
    Pad fits = pad("t", 0.05, 0.02, 0);
    Foliage foliage = new Foliage(Optional.of(Leaves.EVERGREEN), List.of(fits), Map.of());
    assertThat(tree.withFoliage(foliage).foliage().pads()).containsExactly(fits);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> tree.withFoliage(foliage.withPads(List.of(pad("zz", 0.05, 0.02, 0)))))
        .withMessageContaining("\"zz\"");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> tree.withFoliage(foliage.withPads(List.of(fits, fits))))
        .withMessageContaining("used twice");
  }

  @Test
  void pad_liesAlongItsBranch_levelAndAboveIt() {
    Segment branch = Sticks.on("t", 1, "b", Kind.BRANCH, new Point3(0.1, 0, 0.1));
    Skeleton skeleton = new Skeleton(Sticks.tree(Sticks.trunk("t"), branch));
    PadShape shape = PadShape.of(pad("b", 0.06, 0.02, 0.01), skeleton);
    assertThat(shape.centre().distance(new Point3(0.05, 0, 0.11))).isLessThan(1e-12);
    assertThat(shape.lengthway().angleTo(new Direction3(1, 0, 0))).isLessThan(1e-12);
    assertThat(shape.thickway().angleTo(Direction3.UP)).isLessThan(1e-12);
    assertThat(Math.abs(shape.widthway().y())).isEqualTo(1);
    assertThat(shape.halfLength()).isEqualTo(0.03);
    assertThat(shape.halfWidth()).isEqualTo(0.02);
    assertThat(shape.halfThickness()).isEqualTo(0.01);
  }
}
