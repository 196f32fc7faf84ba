// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.window.work.Selection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a click makes of the picked segments. */
final class Picking {
  private Picking() {}

  /**
   * The selection after a click.
   *
   * @param before the one before
   * @param clicked the segment that was clicked; empty for a click beside the tree
   * @param more whether it is added to what is picked, or taken from it
   */
  static Selection after(Selection before, Optional<String> clicked, boolean more) {
    if (!more) {
      return clicked.map(Selection::of).orElse(Selection.NONE);
    }
    if (clicked.isEmpty()) {
      return before;
    }
    List<String> segments = new ArrayList<>(before.segments());
    if (!segments.remove(clicked.get())) {
      segments.add(clicked.get());
    }
    return new Selection(segments);
  }
}
