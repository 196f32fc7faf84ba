// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import java.util.Set;

/**
 * Which segments are not shown in full.
 *
 * @param hidden ids of segments that are left out
 * @param dimmed ids of segments that are only hinted at
 */
public record Visibility(Set<String> hidden, Set<String> dimmed) {
  public static final Visibility ALL = new Visibility(Set.of(), Set.of());

  public Visibility {
    hidden = Set.copyOf(hidden);
    dimmed = Set.copyOf(dimmed);
  }

  /** How a segment is shown. */
  public enum Way {
    SHOWN,
    DIMMED,
    HIDDEN
  }

  public Way of(String segment) {
    if (hidden.contains(segment)) {
      return Way.HIDDEN;
    }
    return dimmed.contains(segment) ? Way.DIMMED : Way.SHOWN;
  }

  public boolean isAll() {
    return hidden.isEmpty() && dimmed.isEmpty();
  }
}
