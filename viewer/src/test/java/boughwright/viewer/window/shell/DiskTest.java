// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A window whose disk gets full, and a folder that takes nothing: small disks in a namespace of
 * their own, where the system lets a process have one. One program does it all; each test looks at
 * what it told.
 */
@OnScreen
class DiskTest {
  @TempDir static Path folder;

  /** What the window told and what was on the disks, by what was tried. */
  private static final Map<String, String> TOLD = new LinkedHashMap<>();

  @BeforeAll
  static void work() throws Exception {
    Graphics.require();
    WindowRobot.requireDisplay();
    Path disk = Files.createDirectory(folder.resolve("disk"));
    Path fixed = Files.createDirectory(folder.resolve("fixed"));
    Path room = Files.createDirectory(folder.resolve("room"));
    Path tree = folder.resolve("larch.tree.json");
    TreeFiles.write(Example.LARCH.read().document(), tree);
    String mounts =
        "mount -t tmpfs -o size=400k none '%s' && mount -t tmpfs -o size=400k none '%s'"
            .formatted(disk, fixed);
    boolean can = new ProcessBuilder("unshare", "-rm", "sh", "-c", mounts).start().waitFor() == 0;
    Assumptions.assumeTrue(can, "no disk of its own can be had here");
    String script =
        mounts
            + " && cp '%s' '%s' && cp '%s' '%s' && mount -o remount,ro '%s' && exec \"$@\""
                .formatted(tree, disk, tree, fixed, fixed);
    Child child =
        Child.startBy(
            List.of("unshare", "-rm", "sh", "-c", script, "sh"),
            DiskWork.class,
            disk.toString(),
            room.toString(),
            fixed.toString());
    for (String line : child.lines()) {
      int colon = line.indexOf(": ");
      TOLD.put(line.substring(0, Math.max(0, colon)), line.substring(colon + 2));
    }
    assertThat(child.code()).as(TOLD.toString()).isZero();
  }

  @Test
  void settingsThatFindNoRoom_areToldOnce_andThoseBeforeStay() {
    assertThat(TOLD.get("settings")).contains("Make room there").doesNotContain("|");
    assertThat(TOLD.get("told once")).isEqualTo("1 1");
    assertThat(TOLD.get("as before")).isEqualTo("true");
  }

  @Test
  void autosaveThatFindsNoRoom_isToldOnce_withWhatToDo() {
    assertThat(TOLD.get("autosave"))
        .contains("No space left", "save often")
        .doesNotContain("|", "Exception");
  }

  @Test
  void savingOnAFullDisk_leavesTheFile_andOffersAnotherPlace() {
    assertThat(TOLD.get("tree")).contains("larch.tree.json", "No space left").doesNotContain("|");
    assertThat(TOLD.get("one")).isEqualTo("true");
    assertThat(TOLD.get("unsaved")).isEqualTo("true");
    assertThat(TOLD.get("elsewhere")).startsWith("Fuller");
  }

  @Test
  void picturesThatFindNoRoom_areToldInALine_andTheOldOneStays() {
    for (String what : List.of("picture", "pair", "no view", "some views")) {
      assertThat(TOLD.get(what))
          .as(what)
          .contains("No space left", "Make room")
          .doesNotContain("|", "Exception");
    }
    assertThat(TOLD.get("old picture")).isEqualTo("an older picture");
    assertThat(TOLD.get("whole views")).isEqualTo("true");
  }

  @Test
  void aFullDisk_isLeftWithoutAnythingHalfWritten() {
    assertThat(TOLD.get("files"))
        .isEqualTo("[filler, home/settings.json, larch.tree.json, old.png]");
  }

  @Test
  void aFolderThatCannotBeWrittenTo_isToldInALine_withAnotherPlace() {
    assertThat(TOLD.get("fixed"))
        .contains("larch.tree.json", "Read-only file system", "another folder")
        .doesNotContain("|");
    assertThat(TOLD.get("fixed offers")).startsWith("Save as");
    assertThat(TOLD.get("fixed title")).startsWith("Mine").endsWith("not saved");
    assertThat(TOLD.get("fixed picture")).contains("Read-only file system").doesNotContain("|");
  }
}
