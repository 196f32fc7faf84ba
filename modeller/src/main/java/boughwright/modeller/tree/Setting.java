// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a tree stands and grows.
 *
 * @param container what it stands in; empty where nobody said
 * @param growing how fast it thickens
 * @param anchors points that lines can be tied to, in file order
 */
public record Setting(Optional<Container> container, Growing growing, List<AnchorPoint> anchors) {
  /** Nothing is said. */
  public static final Setting UNSAID = new Setting(Optional.empty(), Growing.UNSAID, List.of());

  public Setting {
    Objects.requireNonNull(container, "container");
    Objects.requireNonNull(growing, "growing");
    anchors = List.copyOf(anchors);
  }
}
