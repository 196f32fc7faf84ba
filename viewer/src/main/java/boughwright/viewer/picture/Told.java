// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Mark;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Which marks of a page have been named, over all its views. */
final class Told {
  private final int views;
  private final Map<Mark, Boolean> named = new HashMap<>();
  private final Set<Mark> wanted = new HashSet<>();
  private int view;

  /**
   * @param views how many views the page has
   */
  Told(int views) {
    this.views = views;
  }

  /** Begins with the next view. */
  void nextView() {
    view++;
  }

  /**
   * Whether a mark need not be named in this view: a coil, a day and an aid once, a place of
   * failure once in full.
   *
   * @param inFull whether this view would name it in full
   */
  boolean isEnough(Mark mark, boolean inFull) {
    boolean once = isInTheKey(mark);
    boolean failure = mark instanceof Mark.Failure;
    return named.containsKey(mark) && (once || failure && (named.get(mark) || !inFull));
  }

  /** Coils, days and aids stand in the key as well. */
  private static boolean isInTheKey(Mark mark) {
    return mark instanceof Mark.Wire
        || mark instanceof Mark.StageEnd
        || mark instanceof Mark.AidPlace;
  }

  /** Whether a mark is named in another view, or may be yet. */
  boolean isElsewhere(Mark mark) {
    return view < views || named.containsKey(mark);
  }

  /** Notes that a mark should be named in this view, and whether it is, and in full. */
  void note(Mark mark, boolean done, boolean inFull) {
    wanted.add(mark);
    if (done) {
      named.merge(mark, inFull, Boolean::logicalOr);
    }
  }

  /** How many marks found no room in any view; what the key tells is not counted. */
  long missing() {
    return wanted.stream()
        .filter(mark -> !named.containsKey(mark))
        .filter(mark -> !isInTheKey(mark))
        .count();
  }
}
