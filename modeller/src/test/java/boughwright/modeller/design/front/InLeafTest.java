// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.tree.Foliage;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.Wound;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** That leaves hide what is behind them, and only that. */
class InLeafTest {
  private static Document hornbeam(List<Pad> pads) throws Exception {
    Path file = Path.of("..", "examples", "hedge-hornbeam.tree.json");
    Document document = TreeFiles.read(file).document();
    Foliage foliage = new Foliage(Optional.empty(), pads, Map.of());
    return document.withTree(document.tree().withFoliage(foliage));
  }

  private static FrontReading read(Document document, boolean leaf, double azimuth) {
    return FrontCase.of(document, Optional.empty(), FrontWishes.UNSAID)
        .inLeaf(leaf)
        .gauge()
        .read(FrontPose.upright(azimuth));
  }

  @Test
  void bareTree_isSeenAsIfItHadNoPads() throws Exception {
    Pad pad = new Pad("f1", "t3", 0.5, 0.3, 0.3, 0.3, 0, Map.of());
    assertThat(read(hornbeam(List.of(pad)), false, 0))
        .isEqualTo(read(hornbeam(List.of()), false, 0));
  }

  @Test
  void guessOfLeaves_doesNotChangeTheTree_onlyWhatIsSeenOfIt() throws Exception {
    Document document = hornbeam(List.of());
    assertThat(read(document, true, 0.3)).isNotEqualTo(read(document, false, 0.3));
    FrontCase tree = FrontCase.of(document, Optional.empty(), FrontWishes.UNSAID).inLeaf(true);
    assertThat(tree.subject().foliage()).hasSizeGreaterThan(20);
    assertThat(tree.subject().wood().pieces()).hasSize(document.tree().segments().size());
  }

  /** A ball of leaves round the middle of the trunk hides its wounds from every side. */
  @Test
  void woundsInsideLeaves_areSeenFromNowhere() throws Exception {
    Document bare = hornbeam(List.of());
    List<String> hurt = bare.tree().wounds().stream().map(Wound::segment).toList();
    assertThat(hurt).containsOnly("t2", "t3");
    Pad ball = new Pad("f1", "t2", 1, 0.3, 0.3, 0.3, 0, Map.of());
    Document hidden = hornbeam(List.of(ball));
    double most = 0;
    for (int degrees = 0; degrees < 360; degrees += 30) {
      double azimuth = Math.toRadians(degrees);
      most = Math.max(most, wounds(read(bare, false, azimuth)));
      assertThat(wounds(read(hidden, true, azimuth))).as(degrees + " degrees").isZero();
    }
    assertThat(most).isPositive();
  }

  private static double wounds(FrontReading reading) {
    return reading.value(FrontMeasure.WOUNDS).orElseThrow();
  }
}
