// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.scene.Mark;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReviewPictureTest {
  private static final PictureSize SIZE = new PictureSize(1200, 800);

  private static BufferedImage drawn(Document document, List<Mark.Flaw> flaws) throws Exception {
    return Picture.review(
        new PrintedPicture.Reviewed(
            document, Optional.empty(), Optional.empty(), false, flaws, flaws.size() + " found"),
        SIZE);
  }

  private static int red(BufferedImage image, int left) {
    int count = 0;
    for (int x = left; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        count += (image.getRGB(x, y) & 0xFFFFFF) == (Ink.TROUBLE.getRGB() & 0xFFFFFF) ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void eachFault_hasItsNumberInBothViewsAndInTheList() throws Exception {
    Graphics.require();
    Document document = TreeFiles.read(Path.of("../examples/hedge-hornbeam.tree.json")).document();
    Skeleton skeleton = new Skeleton(document.tree());
    List<Mark.Flaw> flaws = new ArrayList<>();
    for (int n = 1; n <= 3; n++) {
      Point3 at = skeleton.point(skeleton.indexOf("b" + n), 0.5);
      flaws.add(new Mark.Flaw(at, n, List.of("Branch too low: b" + n, "0.10 of the height")));
    }
    BufferedImage without = drawn(document, List.of());
    BufferedImage one = drawn(document, flaws.subList(0, 1));
    BufferedImage three = drawn(document, flaws);
    int list = (int) (SIZE.width() * 0.66);
    assertThat(red(without, 0)).isZero();
    assertThat(red(one, list)).isPositive();
    assertThat(red(one, 0)).isGreaterThan(2 * red(one, list));
    assertThat(red(three, list)).isGreaterThan(2 * red(one, list));
    assertThat(red(three, 0)).isGreaterThan(2 * red(one, 0));
  }
}
