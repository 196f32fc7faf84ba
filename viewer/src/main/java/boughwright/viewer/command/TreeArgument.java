// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Parameters;

/** The one tree file that a verb is about. */
final class TreeArgument {
  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      hideParamSyntax = true,
      description = "A tree file, NAME.tree.json.")
  private List<String> files;

  /**
   * What was given.
   *
   * @param path where the file is; empty where it is not said
   * @param file what it holds; empty where it cannot be read
   */
  record Given(Optional<Path> path, Optional<TreeFile> file) {
    Optional<Document> document() {
      return file.map(TreeFile::document);
    }
  }

  /** What was given; notes all that is amiss with it. */
  Given read(Faults faults) {
    Optional<Path> path = faults.tryTo(() -> InputFiles.only(files, "FILE"));
    return new Given(path, path.flatMap(one -> faults.tryTo(() -> TreeFiles.read(one))));
  }
}
