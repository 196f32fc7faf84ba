// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShootsTest {
  private static Skeleton hornbeam() throws Exception {
    Path file = Path.of("..", "examples", "hedge-hornbeam.tree.json");
    return new Skeleton(TreeFiles.read(file).document().tree());
  }

  /** Whichever way the trunk line goes, all wood above the roots is in one shoot, and only once. */
  @ParameterizedTest
  @ValueSource(strings = {"t9", "a7", "b1e", "b1s1b", "c3"})
  void shoots_holdAllWoodAboveTheRootsOnce(String apex) throws Exception {
    Skeleton skeleton = hornbeam();
    WoodLeft wood = new WoodLeft(skeleton);
    List<Shoot> shoots = Shoots.of(wood, TrunkLine.of(wood, Optional.of(apex)));
    double sum = shoots.stream().mapToDouble(shoot -> shoot.line().length()).sum();
    double all = 0;
    for (int i = 0; i < skeleton.size(); i++) {
      all += skeleton.segment(i).kind() == Kind.ROOT ? 0 : skeleton.length(i);
    }
    assertThat(sum).isCloseTo(all, within(1e-9));
    assertThat(shoots.get(0).line().ids()).endsWith(apex.startsWith("b1s") ? "b1s1b" : apex);
  }

  @Test
  void restOfATrunkThatTheLineLeaves_isAShootFromThere() throws Exception {
    Skeleton skeleton = hornbeam();
    WoodLeft wood = new WoodLeft(skeleton);
    List<Shoot> shoots = Shoots.of(wood, TrunkLine.of(wood, Optional.of("a7")));
    Shoot rest = shoots.stream().filter(shoot -> shoot.id().equals("t5")).findFirst().orElseThrow();
    assertThat(rest.line().ids()).containsExactly("t4", "t5", "t6", "t7", "t8", "t9");
    assertThat(rest.line().points().get(0).distance(skeleton.start(skeleton.indexOf("a1"))))
        .isLessThan(1e-12);
    assertThat(rest.seat().on()).isZero();
  }
}
