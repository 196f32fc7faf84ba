// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.NearNames;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import java.util.List;
import java.util.stream.Collectors;

/** Finds the segment a person names. */
final class SegmentChoice {
  private SegmentChoice() {}

  /** Whether a tree has a segment of that id; a fault with near names is noted where not. */
  static boolean check(Tree tree, String id, Faults faults) {
    List<String> known = tree.segments().stream().map(Segment::id).toList();
    if (known.contains(id)) {
      return true;
    }
    List<String> near = NearNames.of(id, known);
    faults.add(
        "--segment",
        "unknown-segment",
        "there is no segment " + UsageFaults.quoted(id) + " in the file",
        near.isEmpty()
            ? "Give one of its ids; the verb check reads the file"
            : "Did you mean "
                + near.stream().map(UsageFaults::quoted).collect(Collectors.joining(" or "))
                + "?");
    return false;
  }
}
