// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.WrapPressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What aids have taken out of the wood, or wound round it, place by place. */
final class AidWork {
  /** Nothing was done. */
  static final AidWork NONE = new AidWork(List.of());

  /** A cut less deep is none: a micrometre [m]. */
  private static final double LEAST = 1e-6;

  private final List<Placed> placed;

  /** An aid and where it is along its segment [m]. */
  private record Placed(Aid aid, int segment, double from, double to) {
    boolean covers(int i, double s) {
      return i == segment && s >= from && s <= to;
    }

    /** Places of the cuts of a relief cut: the middles of equal parts of the stretch [m]. */
    List<Double> cuts() {
      List<Double> cuts = new ArrayList<>();
      for (int k = 0; k < aid.count(); k++) {
        cuts.add(from + (to - from) * (k + 0.5) / aid.count());
      }
      return cuts;
    }

    double depth() {
      return aid.depth().orElse(0);
    }

    double width() {
      return aid.width().orElse(0);
    }
  }

  /**
   * Wood that is gone from one side.
   *
   * @param round its middle round the segment [rad]
   * @param width width across; endless for a cut right across [m]
   * @param depth depth from the surface of the wood [m]
   */
  record Gone(double round, double width, double depth) {}

  private AidWork(List<Placed> placed) {
    this.placed = placed;
  }

  static AidWork of(Skeleton skeleton, List<Proposal> proposals) {
    List<Placed> placed = new ArrayList<>();
    for (Proposal proposal : proposals) {
      for (Aid aid : proposal.aids()) {
        int i = skeleton.indexOf(aid.segment());
        double length = skeleton.length(i);
        placed.add(new Placed(aid, i, aid.from() * length, aid.to() * length));
      }
    }
    return placed.isEmpty() ? NONE : new AidWork(List.copyOf(placed));
  }

  boolean isNone() {
    return placed.isEmpty();
  }

  /** True if sections of a segment are not what they were. */
  boolean shapes(int i) {
    return placed.stream().anyMatch(p -> p.segment() == i && p.aid().kind() != Aid.Kind.WRAP);
  }

  /** Places of a segment where its sections change at once, or begin to change [m]. */
  List<Double> breaks(int i) {
    List<Double> breaks = new ArrayList<>();
    for (Placed p : placed) {
      if (p.segment() == i && p.aid().kind() == Aid.Kind.RELIEF_CUT) {
        for (double cut : p.cuts()) {
          double edge = p.width() / 2;
          double far = edge + p.depth();
          breaks.addAll(List.of(cut - far, cut - edge, cut, cut + edge, cut + far));
        }
      } else if (p.segment() == i && p.aid().kind() != Aid.Kind.WRAP) {
        breaks.add(p.from());
        breaks.add(p.to());
      }
    }
    return breaks;
  }

  /**
   * Radius of the hollow that was made at a place; 0 for none [m].
   *
   * @param inside a place within the same unbroken stretch [m]
   */
  double hollow(int i, double inside) {
    return placed.stream()
        .filter(p -> p.aid().kind() == Aid.Kind.HOLLOW && p.covers(i, inside))
        .mapToDouble(p -> p.depth() / 2)
        .max()
        .orElse(0);
  }

  /**
   * What is gone at a place, the deepest where two meet. Beside a relief cut the wood near the
   * surface carries nothing either: stress spreads again at 45 degrees from the floor of the cut
   * (assumption).
   *
   * @param s the place [m]
   * @param inside a place within the same unbroken stretch [m]
   */
  Optional<Gone> gone(int i, double s, double inside) {
    Gone deepest = null;
    for (Placed p : placed) {
      double depth = 0;
      boolean across = p.aid().kind() == Aid.Kind.RELIEF_CUT;
      if (across && p.segment() == i) {
        depth = besideCut(p, s);
      } else if (p.aid().kind() == Aid.Kind.SLOT && p.covers(i, inside)) {
        depth = p.depth();
      }
      if (depth > (deepest == null ? LEAST : deepest.depth())) {
        double width = across ? Double.POSITIVE_INFINITY : p.width();
        deepest = new Gone(p.aid().round().orElse(0), width, depth);
      }
    }
    return Optional.ofNullable(deepest);
  }

  private static double besideCut(Placed p, double s) {
    double depth = 0;
    for (double cut : p.cuts()) {
      double beside = Math.max(0, Math.abs(s - cut) - p.width() / 2);
      depth = Math.max(depth, p.depth() - beside);
    }
    return depth;
  }

  /** Pressure of a wrap on wood of some radius at a place; 0 where there is none [Pa]. */
  double pressure(int i, double s, double radius) {
    boolean wrapped =
        placed.stream().anyMatch(p -> p.aid().kind() == Aid.Kind.WRAP && p.covers(i, s));
    return wrapped ? WrapPressure.on(radius) : 0;
  }

  /** Places of the cuts of a relief cut along its segment [m]. */
  static List<Double> cuts(Skeleton skeleton, Aid aid) {
    int i = skeleton.indexOf(aid.segment());
    double length = skeleton.length(i);
    return new Placed(aid, i, aid.from() * length, aid.to() * length).cuts();
  }
}
