// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TreeFilesTest {
  @TempDir Path folder;

  @Test
  void read_givesTheSameDocument_afterWriting() throws Exception {
    Path file = folder.resolve("a.tree.json");
    Files.write(file, Sample.bytes());
    TreeFile read = TreeFiles.read(file);
    Path copy = folder.resolve("b.tree.json");
    TreeFiles.write(read.document(), copy);
    assertThat(TreeFiles.read(copy).document()).isEqualTo(read.document());
  }
}
