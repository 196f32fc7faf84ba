// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.Outcome;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.InventedTrees;
import boughwright.viewer.scene.Scene;
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

  /** A slight bend beside a strong one is told by the scale of the strong one, in all of them. */
  @Test
  void colourStandsForTheSameStrain_inAllOfThem() {
    PrintedPicture.Subject strong = bent(6);
    PrintedPicture.Subject slight = bent(1);
    PrintedPicture.Subject none =
        new PrintedPicture.Subject(HEDGE, Optional.of(PLAN), Optional.empty());
    double widest = strong.scene(Optional.empty()).scale().orElseThrow().limit();
    assertThat(slight.scene(Optional.empty()).scale().orElseThrow().limit()).isLessThan(widest);
    List<Scene> scenes = Picture.scenes(List.of(slight, none, strong));
    assertThat(scenes.get(0).scale().orElseThrow().limit()).isEqualTo(widest);
    assertThat(scenes.get(1).scale()).isEmpty();
    assertThat(scenes.get(2).scale().orElseThrow().limit()).isEqualTo(widest);
    assertThat(Picture.scenes(List.of(none)).get(0).scale()).isEmpty();
  }

  private static PrintedPicture.Subject bent(double perMetre) {
    TrialResult trial =
        new Bending(HEDGE.tree()).bend("b1", new Vector3(0, -perMetre, 0)).result(PLAN);
    return new PrintedPicture.Subject(HEDGE, Optional.of(PLAN), Optional.of(trial));
  }
}
