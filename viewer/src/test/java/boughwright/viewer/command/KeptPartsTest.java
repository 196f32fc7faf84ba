// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A verb that writes into a tree file keeps the parts of it that it does not deal with. */
class KeptPartsTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @TempDir private Path folder;

  private Path file;
  private JsonNode before;

  @BeforeEach
  void write() throws IOException {
    BufferedImage photo = new BufferedImage(40, 60, BufferedImage.TYPE_INT_RGB);
    ImageIO.write(photo, "png", folder.resolve("front.png").toFile());
    file =
        TreeFixture.write(
            folder,
            "parts.tree.json",
            TreeFixture.branchedText("Parts (invented)")
                .replace(
                    "\"plans\": [",
                    """
                    "backdrops": [{"photo": "front.png", "seen_from_azimuth_deg": 40,
                      "mm_per_px": 5, "base_px": [20, 55], "shown": 0.5, "mine": "kept"}],
                    "fronts": {"style": "slanting", "weights": {"wounds": 2},
                      "marked": [{"id": "f1", "front_azimuth_deg": 130, "note": "calm"}]},
                    "foliage": {"leaves": "deciduous", "pads": [{"id": "l1", "segment": "b1",
                      "along": 0.7, "length_mm": 90, "width_mm": 60, "thickness_mm": 25}]},
                    "plans": ["""));
    before = MAPPER.readTree(file.toFile());
  }

  private void assertKept() throws IOException {
    JsonNode after = MAPPER.readTree(file.toFile());
    assertThat(after).isNotEqualTo(before);
    for (String part : List.of("backdrops", "fronts", "foliage")) {
      assertThat(values(after.get(part))).as(part).isEqualTo(values(before.get(part)));
    }
  }

  /** Numbers are compared by what they are, as 5 and 5.0 are the same. */
  private static List<String> values(JsonNode node) {
    if (node.isContainerNode()) {
      List<String> inner = new ArrayList<>();
      node.fieldNames()
          .forEachRemaining(
              name -> values(node.get(name)).forEach(one -> inner.add(name + " " + one)));
      if (node.isArray()) {
        node.forEach(one -> inner.addAll(values(one)));
      }
      return node.isObject() ? inner.stream().sorted().toList() : inner;
    }
    return List.of(node.isNumber() ? Double.toString(node.asDouble()) : node.asText());
  }

  @Test
  void reach_keepsPhotosFrontsAndFoliage() throws IOException {
    Ran ran =
        Ran.line(
            "reach",
            file,
            "--segment b1 --to-mm 195,0,140 --anchors root,trunk --lines 1"
                + " --no-risk --no-course --add-to-plan r");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertKept();
  }

  @Test
  void pulltest_keepsPhotosFrontsAndFoliage() throws IOException {
    Ran ran =
        Ran.line(
            "pulltest",
            file,
            "--segment b1 --along 1 --hung-kg 0.3 --moved-mm 6 --done-on 2026-03-05"
                + " --no-risk --accept");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertKept();
  }
}
