// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names for new things that go on with the file's own pattern: t5 after t4, b1c after b1b, b3 after
 * b2 on the trunk, b1s2 for the second shoot on b1.
 */
public final class NextId {
  private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,6})");
  private static final Pattern LETTERED = Pattern.compile("(.*\\d)([b-y])");

  private NextId() {}

  /**
   * A name for a segment that is to grow on another.
   *
   * @param parent the segment it grows on
   * @param kind what it is
   * @param joint whether it goes on from its parent or is a branch on it
   * @throws InputException if there is no such parent
   */
  public static String segment(Document document, String parent, Kind kind, Joint joint)
      throws InputException {
    Skeleton skeleton = new Skeleton(document.tree());
    if (!skeleton.has(parent)) {
      throw Refusal.unknown("segment", parent, ids(document));
    }
    int on = skeleton.indexOf(parent);
    Set<String> taken = new HashSet<>(ids(document));
    return joint == Joint.CONTINUES && skeleton.segment(on).kind() == kind
        ? onward(skeleton, on, taken)
        : aside(skeleton, on, kind, taken);
  }

  /** A free name in a row of names, such as {@code w3}. */
  static String numbered(String prefix, Collection<String> taken) {
    int highest = 0;
    for (String id : taken) {
      Matcher number = NUMBERED.matcher(id);
      if (number.matches() && number.group(1).equals(prefix)) {
        highest = Math.max(highest, Integer.parseInt(number.group(2)));
      }
    }
    return free(prefix + (highest + 1), taken);
  }

  /** The name itself, or one like it that is free; letters of both cases count as the same. */
  static String free(String wanted, Collection<String> taken) {
    Set<String> low = new HashSet<>();
    taken.forEach(id -> low.add(id.toLowerCase(Locale.ROOT)));
    String next = wanted;
    while (low.contains(next.toLowerCase(Locale.ROOT))) {
      next = following(next);
    }
    return next;
  }

  private static String following(String id) {
    Matcher number = NUMBERED.matcher(id);
    if (number.matches()) {
      return number.group(1) + (Integer.parseInt(number.group(2)) + 1);
    }
    Matcher letter = LETTERED.matcher(id);
    return letter.matches() ? letter.group(1) + (char) (letter.group(2).charAt(0) + 1) : id + "2";
  }

  private static String onward(Skeleton skeleton, int on, Set<String> taken) {
    Segment parent = skeleton.segment(on);
    if (LETTERED.matcher(parent.id()).matches()) {
      return free(following(parent.id()), taken);
    }
    if (!NUMBERED.matcher(parent.id()).matches()) {
      return free(parent.id() + "2", taken);
    }
    boolean inRow = parent.kind() == Kind.TRUNK || isNumberedOnward(skeleton, on);
    return free(inRow ? following(parent.id()) : parent.id() + "b", taken);
  }

  /** Whether the parent already goes on from a segment of the same row of numbers. */
  private static boolean isNumberedOnward(Skeleton skeleton, int on) {
    int below = skeleton.parent(on);
    return below != Skeleton.NONE
        && skeleton.joint(on) == Joint.CONTINUES
        && prefix(skeleton.segment(below).id()).equals(prefix(skeleton.segment(on).id()));
  }

  private static String aside(Skeleton skeleton, int on, Kind kind, Set<String> taken) {
    Segment parent = skeleton.segment(on);
    if (parent.kind() == Kind.TRUNK || parent.kind() != kind) {
      return numbered(usualPrefix(skeleton, kind), taken);
    }
    int base = on;
    while (skeleton.joint(base) == Joint.CONTINUES && skeleton.parent(base) != Skeleton.NONE) {
      base = skeleton.parent(base);
    }
    return numbered(skeleton.segment(base).id() + "s", taken);
  }

  /** The beginning that most segments of a kind share where they join another. */
  private static String usualPrefix(Skeleton skeleton, Kind kind) {
    Map<String, Integer> counts = new HashMap<>();
    String best = kind.name().substring(0, 1).toLowerCase(Locale.ROOT);
    int most = 0;
    for (int i = 0; i < skeleton.size(); i++) {
      Segment one = skeleton.segment(i);
      boolean onOther =
          skeleton.parent(i) != Skeleton.NONE
              && skeleton.segment(skeleton.parent(i)).kind() != kind;
      if (one.kind() == kind && onOther && NUMBERED.matcher(one.id()).matches()) {
        int count = counts.merge(prefix(one.id()), 1, Integer::sum);
        if (count > most) {
          most = count;
          best = prefix(one.id());
        }
      }
    }
    return best;
  }

  private static String prefix(String id) {
    Matcher number = NUMBERED.matcher(id);
    return number.matches() ? number.group(1) : id;
  }

  private static Set<String> ids(Document document) {
    Set<String> ids = new HashSet<>();
    document.tree().segments().forEach(segment -> ids.add(segment.id()));
    return ids;
  }
}
