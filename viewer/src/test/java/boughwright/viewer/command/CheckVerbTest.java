// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckVerbTest {
  @TempDir private Path folder;

  private Path faulty() {
    String text =
        TreeFixture.branchedText("Faulty (invented)")
            .replace("\"caliper_end_mm\": 8", "\"caliper_end_mm\": -8");
    return TreeFixture.write(folder, "faulty.tree.json", text);
  }

  @Test
  void soundFile_isCountedInOneLine() {
    Path file = TreeFixture.branched(folder, "Sound (invented)");
    Ran ran = Ran.command("check", file);
    assertThat(ran).isEqualTo(new Ran(0, file + ": sound, 2 segments, 2 plans\n", ""));
  }

  @Test
  void soundFileOfOne_isCountedInTheSingular() {
    Path file = TreeFixture.cantilever(folder);
    assertThat(Ran.command("check", file).out()).isEqualTo(file + ": sound, 1 segment, 1 plan\n");
  }

  @Test
  void fault_isOneLine_withFileLineColumnAndRemedy() {
    Path file = faulty();
    Ran ran = Ran.command("check", file);
    assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines()).hasSize(1);
    assertThat(ran.err()).matches("\\Q" + file + "\\E:7:[0-9]+: .*b1.*-8.*\\n");
  }

  @Test
  void severalFiles_areAllChecked() {
    Path sound = TreeFixture.branched(folder, "Sound (invented)");
    Ran ran = Ran.command("check", faulty(), sound, folder.resolve("nope.tree.json"));
    assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(ran.out()).isEqualTo(sound + ": sound, 2 segments, 2 plans\n");
    assertThat(ran.err().lines()).hasSize(2);
  }

  @Test
  void note_isShown_andTheFileIsSound() {
    String text =
        TreeFixture.branchedText("Unknown wood").replace("carpinus-betulus", "no such wood");
    Path file = TreeFixture.write(folder, "note.tree.json", text);
    Ran ran = Ran.command("check", file);
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).contains(": sound, ", "note: ", "no such wood");
  }

  @Test
  void json_holdsFaultsOfEachFile() {
    Path sound = TreeFixture.branched(folder, "Sound (invented)");
    Ran ran = Ran.command("check", "--json", faulty(), sound);
    assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
    JsonNode files = ran.json().get("files");
    JsonNode problem = files.get(0).get("problems").get(0);
    assertThat(files.get(0).get("sound").booleanValue()).isFalse();
    assertThat(files.get(0).has("segments")).isFalse();
    assertThat(BendJsonTest.names(problem))
        .containsExactly(
            "severity", "source", "line", "column", "subject", "kind", "found", "remedy");
    assertThat(problem.get("severity").textValue()).isEqualTo("fault");
    assertThat(problem.get("line").intValue()).isEqualTo(7);
    assertThat(files.get(1).get("sound").booleanValue()).isTrue();
    assertThat(files.get(1).get("segments").intValue()).isEqualTo(2);
    assertThat(files.get(1).get("plans").intValue()).isEqualTo(2);
    assertThat(files.get(1).get("problems")).isEmpty();
  }
}
