// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.InventedTrees;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.ViewAngle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Words at the marks of a picture, in the units a person wants. */
class MarkWordsTest {
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);
  private static final Scene SCENE =
      Scene.of(HEDGE, Optional.of(PLAN), Optional.of(Bending.drawnIn(HEDGE.tree(), PLAN)));

  private static List<String> words(DisplayUnits units) {
    Camera camera = new Camera(ViewAngle.level(SCENE.front()), SCENE.base(), 1000, 90, 60, 4);
    ViewFrame frame = new ViewFrame(new Rect(0, 0, 90, 60), camera, "", "", 0);
    try (Page page = new Page(new PictureSize(900, 600))) {
      MarkPainter painter = new MarkPainter(page, SCENE, frame, units);
      return SCENE.marks().stream().flatMap(mark -> painter.told(mark).stream()).toList();
    }
  }

  @Test
  void marks_areToldInInchesAndPounds_whereAPersonWantsThem() {
    assertThat(words(DisplayUnits.USUAL))
        .anyMatch(words -> words.endsWith(" N"))
        .anyMatch(words -> words.contains(" mm"));
    assertThat(words(new DisplayUnits(LengthUnit.INCH, ForceUnit.POUND_FORCE)))
        .anyMatch(words -> words.endsWith(" lbf"))
        .anyMatch(words -> words.contains(" in"))
        .noneMatch(words -> words.contains(" mm"))
        .noneMatch(words -> words.endsWith(" N"));
  }
}
