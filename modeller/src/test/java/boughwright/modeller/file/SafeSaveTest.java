// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeSaveTest {
  private static final String NAME = "oak.tree.json";

  @TempDir Path folder;

  private static Document document(String name) throws InputException {
    return TreeFiles.read("d", Change.of().set("/name", '"' + name + '"').bytes()).document();
  }

  private String[] names() {
    String[] names = folder.toFile().list();
    java.util.Arrays.sort(names);
    return names;
  }

  @Test
  void newFile_standsAlone() throws Exception {
    TreeFiles.write(document("one"), folder.resolve(NAME));
    assertThat(names()).containsExactly(NAME);
    assertThat(Files.readString(folder.resolve(NAME))).endsWith("}\n");
  }

  @Test
  void replacedFile_isKeptAsBackup() throws Exception {
    Path file = folder.resolve(NAME);
    TreeFiles.write(document("one"), file);
    byte[] first = Files.readAllBytes(file);
    TreeFiles.write(document("two"), file);
    assertThat(names()).containsExactly(NAME, NAME + "~");
    assertThat(folder.resolve(NAME + "~")).hasBinaryContent(first);
    assertThat(TreeFiles.read(file).document().tree().name()).isEqualTo("two");
    TreeFiles.write(document("three"), file);
    assertThat(names()).containsExactly(NAME, NAME + "~");
    assertThat(TreeFiles.read(folder.resolve(NAME + "~")).document().tree().name())
        .isEqualTo("two");
  }

  /** The first move puts the backup in place, the second the file itself. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void failingMove_leavesTheOldFile_andNothingElse(int failing) throws Exception {
    Path file = folder.resolve(NAME);
    TreeFiles.write(document("one"), file);
    byte[] before = Files.readAllBytes(file);
    int[] calls = {0};
    SafeSave save =
        new SafeSave(
            (from, to) -> {
              if (++calls[0] == failing) {
                throw new IOException("the disk is full");
              }
              SafeSave.Mover.ATOMIC.move(from, to);
            });
    Document two = document("two");
    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> save.save(two, file))
        .withMessageContaining("the disk is full")
        .withMessageContaining("old file is as it was");
    assertThat(file).hasBinaryContent(before);
    assertThat(names()).allMatch(name -> name.startsWith(NAME));
  }

  @Test
  void diskThatCannotReplaceInOneStep_isNamed() throws Exception {
    Path file = folder.resolve(NAME);
    SafeSave save =
        new SafeSave(
            (from, to) -> {
              throw new AtomicMoveNotSupportedException("a", "b", "no");
            });
    Document one = document("one");
    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> save.save(one, file))
        .withMessageContaining("in one step");
    assertThat(names()).isEmpty();
  }

  @Test
  void missingFolder_isRefused() throws Exception {
    Document one = document("one");
    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> TreeFiles.write(one, folder.resolve("no/where.tree.json")))
        .withMessageContaining("no such folder");
  }

  @Test
  void link_staysALink() throws Exception {
    Path real = folder.resolve("real.tree.json");
    TreeFiles.write(document("one"), real);
    Path link = Files.createSymbolicLink(folder.resolve("link.tree.json"), real);
    TreeFiles.write(document("two"), link);
    assertThat(link).isSymbolicLink();
    assertThat(TreeFiles.read(real).document().tree().name()).isEqualTo("two");
  }

  @Test
  void permissions_areKept() throws Exception {
    Path file = folder.resolve(NAME);
    TreeFiles.write(document("one"), file);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    TreeFiles.write(document("two"), file);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-r-----");
  }

  @Test
  void longestName_canBeSaved() throws Exception {
    Path file = folder.resolve("n".repeat(244) + ".tree.json");
    TreeFiles.write(document("one"), file);
    TreeFiles.write(document("two"), file);
    assertThat(TreeFiles.read(file).document().tree().name()).isEqualTo("two");
  }

  @Test
  void nameNoFileCanHold_isRefused_beforeTheDiskIsTouched() throws Exception {
    Tree tree = document("one").tree();
    Tree unnameable = new TreeDraft(tree).name("nul \u0000").build();
    Document document = new Document(unnameable, java.util.List.of(), java.util.Map.of());
    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> TreeFiles.write(document, folder.resolve(NAME)))
        .withMessageContaining("U+0000");
    assertThat(names()).isEmpty();
  }
}
