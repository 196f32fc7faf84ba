// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.Problem;
import java.util.List;
import java.util.Objects;

/**
 * A tree made from measurements, and what the person should know about how it was made.
 *
 * @param document the tree, without plans
 * @param warnings remarks, none of them a fault, in the order of the lines
 */
public record MeasuredTree(Document document, List<Problem> warnings) {
  public MeasuredTree {
    Objects.requireNonNull(document, "document");
    warnings = List.copyOf(warnings);
    if (warnings.stream().anyMatch(Problem::isFault)) {
      throw new IllegalArgumentException("a sheet with a fault gives no tree");
    }
  }
}
