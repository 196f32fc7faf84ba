// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.viewer.gl.Graphics;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Verbs that draw; what a picture shows is tested where it is made. */
class PictureVerbTest {
  @TempDir private Path folder;

  @BeforeAll
  static void requireGraphics() {
    Graphics.require();
  }

  @Test
  void bend_writesAPicture_ofTheSizeAskedFor() throws IOException {
    Path file = TreeFixture.branched(folder, "Picture (invented)");
    Path out = folder.resolve("out.png");
    Ran ran =
        Ran.command(
            "bend", file, "--samples", "100", "--plan", "a", "--picture", out, "--size", "800x600");
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).contains("Picture: ");
    BufferedImage image = ImageIO.read(out.toFile());
    assertThat(image.getWidth()).isEqualTo(800);
    assertThat(image.getHeight()).isEqualTo(600);
    assertThat(
            Ran.command("bend", file, "--samples", "100", "--plan", "a", "--picture", out, "--json")
                .json())
        .anySatisfy(node -> assertThat(node.asText()).isEqualTo(out.toString()));
  }

  @Test
  void view_drawsAnotherPicture_fromAnotherSide() throws IOException {
    Path file = TreeFixture.branched(folder, "View (invented)");
    Path front = folder.resolve("front.png");
    Path side = folder.resolve("side.png");
    Ran first = Ran.command("view", file, "--screenshot", front, "--size", "640x480");
    assertThat(first.code()).isZero();
    assertThat(first.out()).contains("640 x 480 pixels");
    Ran second =
        Ran.command(
            "view",
            file,
            "--screenshot",
            side,
            "--size",
            "640x480",
            "--front",
            "90",
            "--plan",
            "a",
            "--json");
    assertThat(second.json().get("width_px").intValue()).isEqualTo(640);
    assertThat(Files.mismatch(front, side)).isNotNegative();
  }

  @Test
  void trialThatDoesNotHold_isDrawnAsMeasured() {
    Path out = folder.resolve("out.png");
    Ran ran = Ran.command("bend", TreeFixture.pushed(folder), "--picture", out);
    assertThat(ran.code()).isZero();
    assertThat(out).exists();
  }
}
