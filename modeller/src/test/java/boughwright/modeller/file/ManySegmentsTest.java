// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import boughwright.modeller.problem.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ManySegmentsTest {
  /** A hang, not a speed: twenty times what it takes on a slow machine. */
  private static final Duration HANG = Duration.ofSeconds(40);

  @TempDir Path folder;

  private static final String HEAD =
      "{\"format\": \"boughwright-tree\", \"version\": 1, \"name\": \"many\", \"species\": \"larch\","
          + " \"segments\": [\n"
          + "{\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
          + " \"end_mm\": [0,0,100], \"caliper_start_mm\": 90, \"caliper_end_mm\": 80}";

  private static String segment(String id, String parent, double[] end) {
    return String.format(
        Locale.ROOT,
        ",\n{\"id\": \"%s\", \"parent\": \"%s\", \"kind\": \"branch\", \"end_mm\": [%.2f, %.2f, %.2f],"
            + " \"caliper_start_mm\": 1.1, \"caliper_end_mm\": 1.0}",
        id,
        parent,
        end[0],
        end[1],
        end[2]);
  }

  /** Segments at random places, each on one of the fifty before it. */
  private Path bushy(int count) throws Exception {
    Random random = new Random(1);
    StringBuilder text = new StringBuilder(HEAD);
    for (int i = 0; i < count - 1; i++) {
      int parent = Math.max(0, i - 50) + random.nextInt(Math.min(i + 1, 50));
      double[] end = {random.nextDouble() * 500, random.nextDouble() * 500, 100 + i * 0.01};
      text.append(segment("b" + i, parent >= i ? "t" : "b" + parent, end));
    }
    return Files.writeString(folder.resolve("many.tree.json"), text + "\n]}\n");
  }

  @Test
  void treeOf20000Segments_isRead() throws Exception {
    Path file = bushy(20_000);
    TreeFile read = assertTimeoutPreemptively(HANG, () -> TreeFiles.read(file));
    assertThat(read.document().tree().segments()).hasSize(20_000);
  }

  @Test
  void chainOf5000Segments_isReadAndSaved_withoutRecursion() throws Exception {
    StringBuilder text = new StringBuilder(HEAD);
    for (int i = 0; i < 5_000; i++) {
      text.append(
          segment("c" + i, i == 0 ? "t" : "c" + (i - 1), new double[] {0, i % 2, 100.1 + 0.1 * i}));
    }
    Path file = Files.writeString(folder.resolve("deep.tree.json"), text + "\n]}\n");
    TreeFile read = assertTimeoutPreemptively(HANG, () -> TreeFiles.read(file));
    TreeFiles.write(read.document(), file);
    assertThat(TreeFiles.read(file).document()).isEqualTo(read.document());
  }

  @Test
  void ringOf20000Segments_isNamedInOneLine() throws Exception {
    StringBuilder text = new StringBuilder(HEAD);
    for (int i = 0; i < 20_000; i++) {
      text.append(segment("c" + i, "c" + (i + 1) % 20_000, new double[] {i, 0, 0}));
    }
    Path file = Files.writeString(folder.resolve("ring.tree.json"), text + "\n]}\n");
    List<Problem> problems = assertTimeoutPreemptively(HANG, () -> TreeFiles.check(file));
    assertThat(problems).filteredOn(p -> p.kind().equals("ring")).hasSize(1);
    assertThat(problems.get(0).line()).hasSizeLessThan(600 + file.toString().length());
  }

  @Test
  void tooManySegments_areRefused_namingTheLimit() throws Exception {
    Path file = bushy(Limits.SEGMENTS + 1);
    assertThat(TreeFiles.check(file))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.kind()).isEqualTo("too-many-segments");
              assertThat(p.found()).contains("50,001").contains("50,000");
            });
  }

  @Test
  void asManySegmentsAsTheLimit_areRead() throws Exception {
    Path file = bushy(Limits.SEGMENTS);
    assertThat(assertTimeoutPreemptively(HANG, () -> TreeFiles.check(file)))
        .noneMatch(Problem::isFault);
  }

  @Test
  void largeFile_isRefused_beforeItIsRead() throws Exception {
    Path file = folder.resolve("large.tree.json");
    try (var channel =
        java.nio.channels.FileChannel.open(
            file,
            java.nio.file.StandardOpenOption.CREATE,
            java.nio.file.StandardOpenOption.WRITE)) {
      channel.write(java.nio.ByteBuffer.wrap(new byte[] {'}'}), Limits.BYTES);
    }
    assertThat(TreeFiles.check(file))
        .singleElement()
        .satisfies(p -> assertThat(p.found()).contains("16,777,217 bytes").contains("16,777,216"));
  }
}
