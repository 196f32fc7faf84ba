// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.tree.Kind;
import java.util.Objects;
import java.util.Optional;

/**
 * A shoot of the tree above the roots: the trunk line is number 0, every other one sits on a shoot
 * of a smaller number.
 *
 * @param number its number
 * @param line where it runs
 * @param kind what its first segment is to the tree
 * @param live whether it is alive, as far as was said
 * @param union where it leaves another; empty for the trunk line
 */
record Shoot(int number, WoodLine line, Kind kind, boolean live, Optional<Union> union) {
  /** Half calipers of the parent, from its axis to just outside its bark [1]. */
  private static final double CLEAR = 1.3;

  Shoot {
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(kind, "kind");
    if (union.isPresent() == (number == 0)) {
      throw new IllegalArgumentException("all shoots but the trunk line sit on one");
    }
  }

  /** Its first segment; of what a new leader leaves of the old trunk, the one clear of it. */
  String id() {
    boolean isRest = line.pieces().get(0).from() > 0;
    return isRest ? line.spot(clear()).segment() : line.id();
  }

  /** How far along it stands just outside its parent's bark [m]. */
  double clear() {
    return Math.min(CLEAR * seat().parentCaliper() / 2, line.length() / 2);
  }

  /** Its union; there is one unless it is the trunk line. */
  Union seat() {
    return union.orElseThrow();
  }

  boolean isMain() {
    return number == 0;
  }

  /** Whether it stays and grows: no deadwood, and nothing that is kept only to be removed. */
  boolean counts() {
    return live && kind != Kind.DEADWOOD && kind != Kind.SACRIFICE;
  }
}
