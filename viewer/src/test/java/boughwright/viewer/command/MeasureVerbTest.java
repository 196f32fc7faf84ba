// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.problem.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeasureVerbTest {
  @TempDir private Path folder;
  private Path sheet;

  @BeforeEach
  void writeSheet() {
    sheet =
        TreeFixture.write(
            folder,
            "garden.sheet.csv",
            """
            # name: Garden tree (invented)
            # species: carpinus-betulus
            segment,parent,kind,azimuth_deg,elevation_deg,length_mm,caliper_start_mm,caliper_end_mm,along
            t1,,trunk,,90,70,58,50,
            b1,t1,branch,90,30,100,17,14,0.5
            """);
  }

  @Test
  void sheet_becomesATreeFile_besideIt() throws InputException {
    Ran ran = Ran.command("measure", sheet);
    Path tree = folder.resolve("garden.tree.json");
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.words()).contains("written, 2 segments of", "Garden tree (invented)");
    assertThat(TreeFiles.read(tree).document().tree().segments()).hasSize(2);
    assertThat(Ran.command("check", tree).code()).isZero();
  }

  @Test
  void placeAndJson_areAsAsked() {
    Path tree = folder.resolve("other.tree.json");
    Ran ran = Ran.command("measure", sheet, "-o", tree, "--json");
    assertThat(ran.json().get("file").textValue()).isEqualTo(tree.toString());
    assertThat(ran.json().get("segments").intValue()).isEqualTo(2);
    assertThat(tree).exists();
  }

  @Test
  void fileThatIsThere_isReplacedOnlyWhenAsked_andKept() throws IOException {
    Path tree = folder.resolve("garden.tree.json");
    Files.writeString(tree, "mine");
    Ran refused = Ran.command("measure", sheet);
    assertThat(refused.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(refused.err()).contains("--replace");
    assertThat(tree).hasContent("mine");
    assertThat(Ran.command("measure", sheet, "--replace").code()).isZero();
    assertThat(folder.resolve("garden.tree.json~")).hasContent("mine");
    assertThat(Files.readString(tree)).contains("\"boughwright-tree\"");
  }
}
