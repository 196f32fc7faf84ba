// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.Outcome;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.InventedTrees;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SideBySideTest {
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);

  /** Words over one tree alone leave it as large and as high as the tree beside it. */
  @Test
  void sameTree_isTheSameBesideItself_whateverIsWrittenOverIt() throws Exception {
    Graphics.require();
    PrintedPicture.Subject bare =
        new PrintedPicture.Subject(HEDGE, Optional.of(PLAN), Optional.empty());
    Outcome none = new Outcome(false, false, 0, "it snaps over");
    PrintedPicture.Subject told =
        new PrintedPicture.Subject(
            HEDGE, Optional.of(PLAN), Optional.of(Bending.failed(PLAN, none)));
    BufferedImage both = Picture.plans(List.of(bare, told), new PictureSize(1600, 900));
    int half = both.getWidth() / 2;
    int from = both.getHeight() * 2 / 5;
    int rows = both.getHeight() * 2 / 5;
    int[] left = both.getRGB(0, from, half, rows, null, 0, half);
    int[] right = both.getRGB(half, from, half, rows, null, 0, half);
    assertThat(Arrays.stream(left).distinct().count()).as("a tree is there").isGreaterThan(100);
    assertThat(right).isEqualTo(left);
    assertThat(both.getRGB(half, 0, half, from, null, 0, half))
        .isNotEqualTo(both.getRGB(0, 0, half, from, null, 0, half));
  }
}
