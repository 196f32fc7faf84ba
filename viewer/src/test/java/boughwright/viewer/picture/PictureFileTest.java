// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.problem.InputException;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureFileTest {
  @TempDir Path folder;

  private static BufferedImage image() {
    BufferedImage image = new BufferedImage(30, 20, BufferedImage.TYPE_INT_RGB);
    image.setRGB(4, 5, 0x336699);
    return image;
  }

  private long files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.count();
    }
  }

  @Test
  void write_givesTheSamePixels_andLeavesNothingBeside() throws Exception {
    Path file = folder.resolve("tree.png");
    PictureFile.write(image(), file);
    assertThat(ImageIO.read(file.toFile()).getRGB(4, 5) & 0xFFFFFF).isEqualTo(0x336699);
    assertThat(files()).isEqualTo(1);
  }

  @Test
  void write_replacesAnOlderPicture() throws Exception {
    Path file = folder.resolve("tree.PNG");
    Files.writeString(file, "old");
    PictureFile.write(image(), file);
    assertThat(ImageIO.read(file.toFile()).getWidth()).isEqualTo(30);
    assertThat(files()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({
    "none/tree.png, its folder is not there",
    "tree.jpg, pictures are written as PNG",
    "folder.png, is a folder"
  })
  void placeThatCannotBe_isRefusedInOneLine(String name, String found) throws Exception {
    Files.createDirectory(folder.resolve("folder.png"));
    assertThatThrownBy(() -> PictureFile.write(image(), folder.resolve(name)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(found)
        .hasMessageNotContaining("\n");
    assertThat(files()).isEqualTo(1);
  }

  @Test
  void failedMove_keepsWhatWasThere() throws Exception {
    Path full = Files.createDirectories(folder.resolve("tree.png/inside"));
    assertThatThrownBy(() -> PictureFile.write(image(), folder.resolve("tree.png")))
        .isInstanceOf(InputException.class);
    assertThat(full).exists();
    assertThat(files()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({"639, 480", "640, 479", "6001, 1000", "1000, 6001", "-5, 500"})
  void size_outsideTheLimits_isRefusedWithThem(int width, int height) {
    assertThatThrownBy(() -> new PictureSize(width, height))
        .hasMessageContaining("640x480 to 6000x6000");
  }
}
