// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.edit.NewTree;
import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoveryTest {
  /** More than any system gives to a program. */
  private static final long NO_PID = 999_999_999_999L;

  @TempDir Path folder;

  private final List<Process> children = new ArrayList<>();

  private static Document document() throws InputException {
    return NewTree.document("Invented larch", "larix-decidua");
  }

  private Process child(String what) throws IOException {
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Process child =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                classes,
                RecoveryChild.class.getName(),
                what,
                folder.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    children.add(child);
    return child;
  }

  private static BufferedReader words(Process child) {
    return new BufferedReader(
        new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8));
  }

  private void kill(Process child) throws InterruptedException {
    child.destroyForcibly();
    assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
  }

  @AfterEach
  void endChildren() {
    children.forEach(Process::destroyForcibly);
  }

  /** The kept files as if the program that wrote them had ended. */
  private List<LeftBehind> orphaned() throws IOException {
    for (Path file : Recovery.files(folder)) {
      String name = file.getFileName().toString();
      if (name.endsWith(Recovery.KEPT)) {
        Files.move(
            file, file.resolveSibling(NO_PID + "-1-" + LeftBehind.key(file) + Recovery.KEPT));
      }
    }
    return Recovery.leftBehind(folder);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void documents_areThere_whenTheirProgramWasKilled() throws Exception {
    Process child = child("keep");
    assertThat(words(child).readLine()).isEqualTo("kept");
    assertThat(Recovery.leftBehind(folder)).isEmpty();
    kill(child);
    List<LeftBehind> left = Recovery.leftBehind(folder);
    assertThat(left).extracting(LeftBehind::name).containsOnly("Invented larch").hasSize(2);
    for (LeftBehind one : left) {
      LeftBehind.Taken taken = one.take().orElseThrow();
      if (taken.file().isPresent()) {
        assertThat(taken.file()).contains(folder.resolve("larch.tree.json"));
        assertThat(taken.document())
            .isEqualTo(SegmentEdits.setCalipers("t1", 0.041, 0.037).of(document()));
      } else {
        assertThat(taken.photos().get("front.jpg")).containsExactly(1, 2, 3);
        assertThat(taken.document()).isEqualTo(document());
      }
      assertThat(Recovery.leftBehind(folder)).doesNotContain(one);
      taken.recovery().forget();
    }
    assertThat(names()).isEmpty();
  }

  @Test
  void document_isTakenOnce_whenTwoProgramsStartAtOnce() throws Exception {
    Process keeper = child("keep");
    assertThat(words(keeper).readLine()).isEqualTo("kept");
    kill(keeper);
    Process one = child("take");
    Process two = child("take");
    BufferedReader oneSays = words(one);
    BufferedReader twoSays = words(two);
    assertThat(oneSays.readLine()).isEqualTo("ready");
    assertThat(twoSays.readLine()).isEqualTo("ready");
    one.getOutputStream().close();
    two.getOutputStream().close();
    int taken =
        Integer.parseInt(oneSays.readLine().substring(5))
            + Integer.parseInt(twoSays.readLine().substring(5));
    assertThat(taken).isEqualTo(2);
    kill(one);
    kill(two);
    assertThat(Recovery.leftBehind(folder)).hasSize(2);
  }

  @Test
  void document_isNotLeftBehind_whileItsProgramRuns() throws Exception {
    new Recovery(folder).keep(document(), Optional.empty());
    assertThat(names()).hasSize(1);
    assertThat(Recovery.leftBehind(folder)).isEmpty();
  }

  @Test
  void laterProgramOfTheSameNumber_isNotTakenForTheOld() throws Exception {
    new Recovery(folder).keep(document(), Optional.empty());
    Path kept = Recovery.files(folder).get(0);
    String earlier = ProcessHandle.current().pid() + "-1000000-" + LeftBehind.key(kept);
    Files.move(kept, kept.resolveSibling(earlier + Recovery.KEPT));
    assertThat(Recovery.leftBehind(folder)).hasSize(1);
  }

  @Test
  void eachWindow_keepsItsOwnDocument() throws Exception {
    Recovery one = new Recovery(folder);
    Recovery two = new Recovery(folder);
    one.keep(document(), Optional.empty());
    two.keep(document(), Optional.empty());
    assertThat(names()).hasSize(2);
    one.forget();
    assertThat(names()).hasSize(1);
    assertThat(orphaned()).hasSize(1);
  }

  @Test
  void lastState_isKept_inOneFile() throws Exception {
    Recovery recovery = new Recovery(folder);
    Document document = document();
    for (int k = 1; k <= 20; k++) {
      document = SegmentEdits.setCalipers("t1", 0.03 + k * 1e-4, 0.025).of(document);
      assertThat(recovery.keep(document, Optional.empty())).isEmpty();
    }
    assertThat(names()).hasSize(1);
    assertThat(orphaned().get(0).take().orElseThrow().document()).isEqualTo(document);
  }

  @Test
  void file_isNotWrittenAgain_whenNothingChanged() throws Exception {
    Recovery recovery = new Recovery(folder);
    recovery.keep(document(), Optional.empty());
    Path kept = Recovery.files(folder).get(0);
    FileTime longAgo = FileTime.from(Instant.parse("2026-01-01T00:00:00Z"));
    Files.setLastModifiedTime(kept, longAgo);
    recovery.keep(document(), Optional.empty());
    assertThat(Files.getLastModifiedTime(kept)).isEqualTo(longAgo);
    recovery.keep(document(), Optional.of(folder.resolve("new.tree.json")));
    assertThat(Files.getLastModifiedTime(kept)).isNotEqualTo(longAgo);
  }

  @Test
  void photos_areWrittenOnce_andForgottenWithTheirDocument() throws Exception {
    Recovery recovery = new Recovery(folder);
    Map<String, byte[]> photos = Map.of("a.jpg", new byte[] {7}, "b/a.jpg", new byte[] {8});
    recovery.keep(document(), Optional.empty(), photos);
    recovery.keep(
        SegmentEdits.setCalipers("t1", 0.05, 0.04).of(document()), Optional.empty(), photos);
    assertThat(names()).hasSize(3);
    LeftBehind.Taken taken = orphaned().get(0).take().orElseThrow();
    assertThat(taken.photos().get("a.jpg")).containsExactly(7);
    assertThat(taken.photos().get("b/a.jpg")).containsExactly(8);
    taken.recovery().keep(document(), Optional.empty(), taken.photos());
    assertThat(names()).hasSize(3);
    taken.recovery().forget();
    assertThat(names()).isEmpty();
  }

  @Test
  void refusingDisk_isToldOnce_andTheWorkGoesOn() throws Exception {
    Path blocked = Files.writeString(folder.resolve("file"), "no folder").resolve("inside");
    Recovery recovery = new Recovery(blocked);
    Optional<Problem> first = recovery.keep(document(), Optional.empty());
    assertThat(first.orElseThrow().line()).contains("not kept").doesNotContain("\n");
    assertThat(first.orElseThrow().isFault()).isFalse();
    assertThat(recovery.keep(document(), Optional.empty())).isEmpty();
    Files.delete(folder.resolve("file"));
    assertThat(recovery.keep(document(), Optional.empty())).isEmpty();
    assertThat(Recovery.files(blocked)).hasSize(1);
    recovery.forget();
  }

  @Test
  void nothingIsLeftBehind_whereThereIsNoFolder() {
    assertThat(Recovery.leftBehind(folder.resolve("nowhere"))).isEmpty();
  }

  @Test
  void damagedFile_isListedAndLeftAlone() throws Exception {
    new Recovery(folder).keep(document(), Optional.empty());
    Path kept = orphaned().get(0).kept();
    byte[] whole = Files.readAllBytes(kept);
    for (int length : new int[] {0, 1, whole.length / 2, whole.length - 1}) {
      Files.write(kept, java.util.Arrays.copyOf(whole, length));
      LeftBehind left = Recovery.leftBehind(folder).get(0);
      assertThat(left.name()).isEmpty();
      assertThatThrownBy(left::take)
          .isInstanceOf(InputException.class)
          .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n"));
      assertThat(kept).exists();
    }
  }

  @Test
  void leftBehind_isGone_whenItIsDiscarded() throws Exception {
    new Recovery(folder).keep(document(), Optional.empty(), Map.of("a.jpg", new byte[] {7}));
    LeftBehind left = orphaned().get(0);
    left.discard();
    assertThat(names()).isEmpty();
    assertThat(left.take()).isEmpty();
  }

  @Test
  void strangersFiles_areLeftAlone() throws Exception {
    Files.writeString(folder.resolve("letter.txt"), "mine");
    Files.writeString(folder.resolve("other.kept"), "mine");
    Files.writeString(folder.resolve(NO_PID + "-1-x.tmp"), "half written");
    Path photo = Files.writeString(folder.resolve("x-1.photo"), "never named");
    assertThat(Recovery.leftBehind(folder)).isEmpty();
    assertThat(names()).containsExactly("letter.txt", "other.kept", "x-1.photo");
    Files.setLastModifiedTime(photo, FileTime.from(Instant.now().minus(Duration.ofDays(3))));
    Recovery.leftBehind(folder);
    assertThat(names()).containsExactly("letter.txt", "other.kept");
  }
}
