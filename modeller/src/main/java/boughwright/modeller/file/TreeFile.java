// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.Problem;
import java.util.List;
import java.util.Objects;

/**
 * A tree file that was read.
 *
 * @param document what it holds
 * @param warnings what the person should look at, in the order of the file
 */
public record TreeFile(Document document, List<Problem> warnings) {
  public TreeFile {
    Objects.requireNonNull(document, "document");
    warnings = List.copyOf(warnings);
  }
}
