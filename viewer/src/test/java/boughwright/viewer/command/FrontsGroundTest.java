// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb tells the root base of the front it explains. */
class FrontsGroundTest {
  private static final String HORNBEAM = "../examples/hedge-hornbeam.tree.json";
  private static final String LARCH = "../examples/larch.tree.json";

  @Test
  void explainedFront_isToldWithItsRootBase() {
    Ran ran = Ran.command("fronts", HORNBEAM, "--plan", "a", "--at", "20,3,-2");
    assertThat(ran.out()).contains("Root base", "Roots and container", "How it stands");
    assertThat(ran.code()).isZero();
  }

  /** Of a larch a quarter of the roots may go, as of other conifers. */
  @Test
  void containerToTry_standsAcrossTheFront() {
    Ran ran = Ran.command("fronts", LARCH, "--at", "40,5,0", "--container", "120x150x40", "--json");
    JsonNode ground = ran.json().at("/at/ground");
    assertThat(ground.at("/container/length_mm").asDouble()).isCloseTo(120, within(1e-9));
    assertThat(ground.at("/root_mass/cuts")).isNotEmpty();
    assertThat(ground.at("/root_mass/share_allowed").asDouble()).isEqualTo(0.25);
    for (JsonNode level : ground.at("/root_base/levels")) {
      assertThat(level.has("upper_mm")).isTrue();
    }
  }

  @Test
  void containerWithoutThreeSizes_isRefused() {
    Ran ran = Ran.command("fronts", HORNBEAM, "--at", "20", "--container", "300x200");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err()).contains("--container", "330x250x110");
    assertThat(ran.out()).isEmpty();
  }

  @Test
  void rootBase_isDrawnFromAbove(@TempDir Path folder) throws Exception {
    Path picture = folder.resolve("roots.png");
    Ran ran =
        Ran.command(
            "fronts", HORNBEAM, "--at", "20,5,0", "--roots", picture, "--size", "900x700",
            "--json");
    assertThat(ran.code()).isZero();
    BufferedImage drawn = ImageIO.read(picture.toFile());
    assertThat(drawn.getWidth()).isEqualTo(900);
    assertThat(ran.json().at("/root_base_picture").asText()).isEqualTo(picture.toString());
    Ran none = Ran.command("fronts", HORNBEAM, "--roots", picture);
    assertThat(none.code()).isEqualTo(2);
    assertThat(none.err()).contains("--roots", "Add --at");
  }
}
