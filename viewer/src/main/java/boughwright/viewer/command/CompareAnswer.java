// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.physics.choice.PlanFigures;
import java.util.List;
import java.util.Optional;

/**
 * Plans side by side.
 *
 * @param file the tree
 * @param plans what is told of each, in the order asked for
 * @param picture the picture that was written
 */
record CompareAnswer(TreeFile file, List<PlanFigures> plans, Optional<String> picture) {
  CompareAnswer {
    plans = List.copyOf(plans);
  }
}
