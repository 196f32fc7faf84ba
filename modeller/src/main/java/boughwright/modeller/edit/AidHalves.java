// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Aid;
import java.util.ArrayList;
import java.util.List;

/** What becomes of an aid when its segment is made two: every saw mark stays where it is. */
final class AidHalves {
  private AidHalves() {}

  /** Where the k-th relief cut lies, as a fraction of the segment. */
  private static double cut(Aid aid, int k) {
    return aid.from() + (aid.to() - aid.from()) * (k + 0.5) / aid.count();
  }

  /** Whether a place lies in a relief cut. */
  static boolean isThroughCut(Aid aid, double at, double length) {
    if (aid.kind() != Aid.Kind.RELIEF_CUT || !(aid.from() < at && at < aid.to())) {
      return false;
    }
    double half = aid.width().orElseThrow() / 2 / length;
    for (int k = 0; k < aid.count(); k++) {
      if (Math.abs(cut(aid, k) - at) <= half) {
        return true;
      }
    }
    return false;
  }

  /**
   * The aid on the two halves.
   *
   * @param at where the segment is split, as a fraction of it
   * @param outer name of the outer half; the inner one keeps the name
   */
  static List<Aid> of(Aid aid, double at, String outer) {
    if (aid.to() <= at) {
      return List.of(inner(aid, aid.from(), aid.to(), at));
    }
    if (aid.from() >= at) {
      return List.of(outer(aid, aid.from(), aid.to(), new Half(outer, at)));
    }
    return aid.kind() == Aid.Kind.RELIEF_CUT
        ? cuts(aid, at, outer)
        : List.of(inner(aid, aid.from(), at, at), outer(aid, at, aid.to(), new Half(outer, at)));
  }

  private record Half(String segment, double at) {}

  private static Aid inner(Aid aid, double from, double to, double at) {
    return Relocation.on(aid.segment(), aid, from / at, to >= at ? 1 : to / at);
  }

  private static Aid outer(Aid aid, double from, double to, Half half) {
    double rest = 1 - half.at();
    return Relocation.on(
        half.segment(),
        aid,
        Math.max(0, (from - half.at()) / rest),
        to >= 1 ? 1 : (to - half.at()) / rest);
  }

  /** Cuts lie in the middle of equal parts of the stretch; the part that is split shrinks. */
  private static List<Aid> cuts(Aid aid, double at, String outer) {
    double part = (aid.to() - aid.from()) / aid.count();
    List<Aid> all = new ArrayList<>();
    int inside = Math.min(aid.count(), (int) Math.floor((at - aid.from()) / part));
    if (inside > 0) {
      all.add(
          counted(inner(aid, aid.from(), Math.min(at, aid.from() + inside * part), at), inside));
    }
    int beyond = inside;
    if (inside < aid.count() && aid.from() + inside * part < at) {
      double middle = cut(aid, inside);
      double half = Math.min(part / 2, Math.abs(middle - at));
      all.add(
          counted(
              middle < at
                  ? inner(aid, middle - half, middle + half, at)
                  : outer(aid, middle - half, middle + half, new Half(outer, at)),
              1));
      beyond++;
    }
    if (beyond < aid.count()) {
      double from = Math.max(at, aid.from() + beyond * part);
      all.add(counted(outer(aid, from, aid.to(), new Half(outer, at)), aid.count() - beyond));
    }
    return all;
  }

  private static Aid counted(Aid aid, int count) {
    return new Aid(
        aid.kind(),
        aid.segment(),
        aid.from(),
        aid.to(),
        aid.round(),
        aid.width(),
        aid.depth(),
        count,
        aid.extras());
  }
}
