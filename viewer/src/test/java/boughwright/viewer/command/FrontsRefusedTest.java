// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.MovedTrunk.few;
import static boughwright.viewer.command.MovedTrunk.fronts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the verb refuses, and that nothing is written then. */
class FrontsRefusedTest {
  @TempDir private Path folder;

  @Test
  void whatCannotBeUsed_isRefusedTogether_andNothingIsWritten() throws IOException {
    Path file = MovedTrunk.write(folder);
    String before = Files.readString(file);
    Ran ran =
        fronts(
            file,
            "--plan",
            "z",
            "--style",
            "windy",
            "--eye-mm",
            "high",
            "--eye-distance-mm",
            "0",
            "--tilt-deg",
            "95",
            "--weights",
            "mouvement=2,taper,wounds=-1",
            "--container",
            "300x200",
            "--at",
            "20,5",
            "--picture",
            "p.jpg",
            "--size",
            "10x10",
            "--choice",
            "9",
            "--add-to-plan",
            " ");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    for (String option :
        List.of(
            "--plan",
            "--style",
            "--eye-mm",
            "--eye-distance-mm",
            "--tilt-deg",
            "--container",
            "--at",
            "--size",
            "--choice",
            "--add-to-plan")) {
      assertThat(ran.err().lines().filter(line -> line.startsWith(option + ":"))).isNotEmpty();
    }
    assertThat(ran.err().lines().filter(line -> line.startsWith("--weights:"))).hasSize(3);
    assertThat(ran.err())
        .contains("Did you mean movement?")
        .contains("\"windy\" is none of upright")
        .contains("p.jpg");
    assertThat(Files.readString(file)).isEqualTo(before);
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(file);
    }
  }

  @Test
  void optionsWithoutUse_areRefused() {
    Path file = MovedTrunk.write(folder);
    assertThat(fronts(file, "--choice", "2").err()).contains("nothing is done with it");
    assertThat(fronts(file, "--size", "900x600").err()).contains("there is no picture");
    assertThat(fronts(file, "--eye-distance-mm", "900").err()).contains("Add --eye-mm");
    assertThat(fronts(file, "--at", "3", "--add-to-plan", "f").err()).contains("--at");
    String none =
        "movement=0,taper=0,root-base=0,wounds=0,at-viewer=0,apex-lean=0,sides=0,over-base=0,"
            + "depth=0,first-branch=0,space=0,bulge=0,deadwood=0";
    assertThat(fronts(file, "--weights", none).err()).contains("every weight is 0");
  }

  /** An upright rod is the same from every side: there is no front, and none is made up. */
  @Test
  void oneStraightUprightSegment_hasNoFront() throws IOException {
    Path file = TreeFixture.pulled(folder, "\"tension_N\": 5");
    String before = Files.readString(file);
    Ran ran = few(file);
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words())
        .startsWith("No side of this tree is better than another:")
        .contains("no front is put forward")
        .contains("the trunk line is one straight piece")
        .contains("the tree has no branches");
    JsonNode answer = few(file, "--json").json();
    assertThat(answer.get("side_can_be_chosen").asBoolean()).isFalse();
    assertThat(answer.get("fronts")).isEmpty();
    Ran kept = few(file, "--add-to-plan", "f");
    assertThat(kept.code()).isEqualTo(2);
    assertThat(kept.out()).isEmpty();
    assertThat(kept.err()).contains("no side of this tree is better than another");
    assertThat(Files.readString(file)).isEqualTo(before);
  }
}
