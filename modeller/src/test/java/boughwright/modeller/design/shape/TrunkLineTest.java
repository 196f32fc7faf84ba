// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class TrunkLineTest {
  private static final double ROUNDING = 1e-12;

  private static Skeleton hornbeam;

  @BeforeAll
  static void read() throws Exception {
    Path file = Path.of("..", "examples", "hedge-hornbeam.tree.json");
    hornbeam = new Skeleton(TreeFiles.read(file).document().tree());
  }

  private static List<String> names(TrunkLine line) {
    return line.segments().stream().map(i -> hornbeam.segment(i).id()).toList();
  }

  @Test
  void line_runsFromTheBaseToTheTip_andItsPointsMeet() {
    TrunkLine line = TrunkLine.of(new WoodLeft(hornbeam), Optional.empty());
    assertThat(line.points().get(0)).isEqualTo(hornbeam.start(hornbeam.outward(0)));
    int last = line.segments().get(line.segments().size() - 1);
    assertThat(line.apex().distance(hornbeam.end(last))).isLessThan(ROUNDING);
    double sum = line.segments().stream().mapToDouble(hornbeam::length).sum();
    assertThat(line.length()).isCloseTo(sum, within(ROUNDING));
  }

  @Test
  void apexOfAPlan_endsTheLine() {
    TrunkLine line = TrunkLine.of(new WoodLeft(hornbeam), Optional.of("a3"));
    assertThat(names(line)).contains("a3").startsWith(hornbeam.segment(hornbeam.outward(0)).id());
  }

  @Test
  void cutLine_endsAtTheCut() {
    TrunkLine whole = TrunkLine.of(new WoodLeft(hornbeam), Optional.empty());
    String second = names(whole).get(1);
    Cutting cut = new Cutting(hornbeam, List.of(new Spot(second, 0.5)));
    TrunkLine left = TrunkLine.of(new WoodLeft(cut), Optional.empty());
    assertThat(names(left)).hasSize(2);
    assertThat(left.apex()).isEqualTo(hornbeam.point(hornbeam.indexOf(second), 0.5));
    assertThat(new WoodLeft(cut).pieces()).hasSizeLessThan(hornbeam.size());
  }

  @Test
  void apexThatIsCutAway_isRefused() {
    Cutting cut = new Cutting(hornbeam, List.of(new Spot("a1", 0)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TrunkLine.of(new WoodLeft(cut), Optional.of("a3")))
        .withMessageContaining("cut away");
  }

  @Test
  void limbs_holdEachSegmentOnce() {
    WoodLeft wood = new WoodLeft(hornbeam);
    List<Integer> all = wood.limbs().stream().flatMap(limb -> limb.segments().stream()).toList();
    assertThat(all).hasSize(hornbeam.size()).doesNotHaveDuplicates();
    assertThat(wood.limbs()).allMatch(limb -> wood.limbOf(limb.last()).equals(limb));
  }
}
