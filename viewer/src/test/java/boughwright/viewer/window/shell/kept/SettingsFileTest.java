// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell.kept;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Tone;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is remembered from one start to the next, whatever the disk does. */
class SettingsFileTest {
  private static final Path USER = Path.of("own").toAbsolutePath();

  @TempDir Path folder;

  @Test
  void settings_comeBackAsTheyWereKept() {
    Settings liked =
        new Settings(
            Tone.DARK,
            TextSize.LARGE,
            new DisplayUnits(LengthUnit.INCH, ForceUnit.POUND_FORCE),
            List.of(folder.resolve("a.tree.json"), folder.resolve("b.tree.json")),
            true,
            Map.of(":0.0 1920x1080", new Settings.Place(12, -3, 1100, 700, true)));
    assertThat(new SettingsFile(folder.resolve("new")).write(liked)).isTrue();
    assertThat(new SettingsFile(folder.resolve("new")).read()).isEqualTo(liked);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "[]",
        "null",
        "7",
        "{\"tone\": 3, \"recent\": \"x\", \"text_percent\": -1}",
        "not json at all"
      })
  void aBrokenFile_countsAsAFirstStart(String text) throws Exception {
    Files.writeString(folder.resolve("settings.json"), text);
    assertThat(new SettingsFile(folder).read()).isEqualTo(Settings.FIRST);
  }

  @Test
  void aFolderThatCannotBe_isNotAFault() throws Exception {
    Files.writeString(folder.resolve("taken"), "a file");
    SettingsFile file = new SettingsFile(folder.resolve("taken").resolve("home"));
    assertThat(file.write(Settings.FIRST)).isFalse();
    assertThat(file.read()).isEqualTo(Settings.FIRST);
  }

  @Test
  void recentFiles_areFewAndTheLastIsFirst() {
    Settings settings = Settings.FIRST;
    for (int i : IntStream.rangeClosed(1, 15).toArray()) {
      settings = settings.withRecent(folder.resolve(i + ".tree.json"));
    }
    settings = settings.withRecent(folder.resolve("9.tree.json"));
    assertThat(settings.recent()).hasSize(Settings.MOST_RECENT);
    assertThat(settings.recent().get(0)).isEqualTo(folder.resolve("9.tree.json"));
    assertThat(settings.recent()).doesNotHaveDuplicates();
  }

  @Test
  void theFolder_isTheOneThePersonNames() {
    assertThat(HomeFolder.of(Map.of("BOUGHWRIGHT_HOME", folder.toString()), "Linux", USER))
        .isEqualTo(folder);
  }

  @Test
  void theFolder_followsTheSystem() {
    assertThat(HomeFolder.of(Map.of(), "Linux", USER))
        .isEqualTo(USER.resolve(".local/state/boughwright"));
    assertThat(HomeFolder.of(Map.of("XDG_STATE_HOME", folder.toString()), "Linux", USER))
        .isEqualTo(folder.resolve("boughwright"));
    assertThat(HomeFolder.of(Map.of(), "Mac OS X", USER))
        .isEqualTo(USER.resolve("Library/Application Support/Boughwright"));
    assertThat(HomeFolder.of(Map.of("APPDATA", folder.toString()), "Windows 11", USER))
        .isEqualTo(folder.resolve("Boughwright"));
  }
}
