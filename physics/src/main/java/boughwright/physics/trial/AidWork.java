// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.WrapPressure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What aids have taken out of the wood, or wound round it, place by place. */
final class AidWork {
  /** Nothing was done. */
  static final AidWork NONE = new AidWork(List.of());

  private final List<Placed> placed;

  /**
   * An aid and where it is along its segment.
   *
   * @param from where it starts [m]
   * @param to where it ends [m]
   * @param cuts stretches round the cuts of a relief cut
   */
  private record Placed(Aid aid, int segment, double from, double to, List<Stretch> cuts) {
    static Placed of(Skeleton skeleton, Aid aid) {
      int i = skeleton.indexOf(aid.segment());
      double length = skeleton.length(i);
      List<Stretch> cuts = new ArrayList<>();
      for (int k = 0; k < aid.count() && aid.kind() == Aid.Kind.RELIEF_CUT; k++) {
        double along = aid.from() + (aid.to() - aid.from()) * (k + 0.5) / aid.count();
        double bark = skeleton.segment(i).bark().orElse(skeleton.tree().bark().orElse(0));
        double flank =
            CutFlank.length(skeleton.caliper(i, along) / 2 - bark, aid.depth().orElseThrow());
        cuts.add(new Stretch(along * length, aid.width().orElseThrow() / 2 + flank));
      }
      return new Placed(aid, i, aid.from() * length, aid.to() * length, cuts);
    }

    /** Whether a place is worked on. */
    boolean covers(int i, double s) {
      boolean within = i == segment && s >= from && s <= to;
      return aid.kind() == Aid.Kind.RELIEF_CUT
          ? i == segment && cuts.stream().anyMatch(cut -> cut.covers(s))
          : within;
    }
  }

  /**
   * Wood round a cut that carries nothing above its floor.
   *
   * @param middle where the cut is along its segment [m]
   * @param half how far the stretch goes on each side [m]
   */
  record Stretch(double middle, double half) {
    boolean covers(double s) {
      return Math.abs(s - middle) < half;
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
        placed.add(Placed.of(skeleton, aid));
      }
    }
    return placed.isEmpty() ? NONE : new AidWork(List.copyOf(placed));
  }

  boolean isNone() {
    return placed.isEmpty();
  }

  /**
   * True if wood is gone at a place.
   *
   * @param inside a place within an unbroken stretch [m]
   */
  boolean shapes(int i, double inside) {
    return placed.stream().anyMatch(p -> p.aid().kind() != Aid.Kind.WRAP && p.covers(i, inside));
  }

  /** Places of a segment where its sections change at once [m]. */
  List<Double> breaks(int i) {
    List<Double> breaks = new ArrayList<>();
    for (Placed p : placed) {
      if (p.segment() == i && p.aid().kind() == Aid.Kind.RELIEF_CUT) {
        p.cuts().forEach(cut -> breaks.add(cut.middle() - cut.half()));
        p.cuts().forEach(cut -> breaks.add(cut.middle() + cut.half()));
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
        .mapToDouble(p -> p.aid().depth().orElseThrow() / 2)
        .max()
        .orElse(0);
  }

  /**
   * What is gone from a side at a place, the deepest where two meet.
   *
   * @param inside a place within an unbroken stretch [m]
   */
  Optional<Gone> gone(int i, double inside) {
    return placed.stream()
        .filter(p -> p.aid().round().isPresent() && p.covers(i, inside))
        .map(
            p ->
                new Gone(
                    p.aid().round().getAsDouble(),
                    p.aid().kind() == Aid.Kind.RELIEF_CUT
                        ? Double.POSITIVE_INFINITY
                        : p.aid().width().orElseThrow(),
                    p.aid().depth().orElseThrow()))
        .max(Comparator.comparingDouble(Gone::depth));
  }

  /** Pressure of a wrap on wood of some radius at a place; 0 where there is none [Pa]. */
  double pressure(int i, double s, double radius) {
    boolean wrapped =
        placed.stream().anyMatch(p -> p.aid().kind() == Aid.Kind.WRAP && p.covers(i, s));
    return wrapped ? WrapPressure.on(radius) : 0;
  }

  /** The stretches round the cuts of a relief cut. */
  static List<Stretch> cuts(Skeleton skeleton, Aid aid) {
    return Placed.of(skeleton, aid).cuts();
  }
}
