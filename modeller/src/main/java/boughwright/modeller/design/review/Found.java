// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import java.util.List;

/**
 * A fault as it is found, before anything is said about what to do.
 *
 * @param kind what
 * @param segments ids of the segments concerned, the one to act on first
 * @param where the place for its mark
 * @param measures what was measured, the measure that decides first
 * @param subject what would be acted on
 */
record Found(
    FaultKind kind, List<String> segments, Where where, List<Measured> measures, Subject subject) {
  /** What would be acted on. */
  sealed interface Subject {
    /** The caliper that is concerned [m]. */
    double caliper();

    /** Whole shoots, at least one. */
    record Branches(List<Shoot> shoots) implements Subject {
      public Branches {
        shoots = List.copyOf(shoots);
      }

      @Override
      public double caliper() {
        return shoots.stream().mapToDouble(s -> s.seat().caliper()).max().orElseThrow();
      }
    }

    /**
     * A shoot of which one place is in the way.
     *
     * @param at that place [m along it]
     */
    record Place(Shoot shoot, double at) implements Subject {
      @Override
      public double caliper() {
        return shoot.line().caliper(at);
      }
    }

    /**
     * A stretch of a shoot.
     *
     * @param from where it starts [m along it]
     * @param to where it ends [m along it]
     */
    record Stretch(Shoot shoot, double from, double to) implements Subject {
      @Override
      public double caliper() {
        return shoot.line().caliper(middle());
      }

      double middle() {
        return (from + to) / 2;
      }
    }
  }

  /** A fault of one branch, marked just outside its parent's bark. */
  static Found branch(FaultKind kind, Shoot shoot, List<Measured> measures) {
    return new Found(
        kind, List.of(shoot.id()), mark(shoot), measures, new Subject.Branches(List.of(shoot)));
  }

  /** A fault of a stretch, marked in its middle. */
  static Found stretch(FaultKind kind, Subject.Stretch stretch, List<Measured> measures) {
    WoodLine line = stretch.shoot().line();
    return new Found(
        kind,
        line.idsBetween(stretch.from(), stretch.to()),
        Where.on(line, stretch.middle()),
        measures,
        stretch);
  }

  /** A place on a branch just outside its parent's bark. */
  static Where mark(Shoot shoot) {
    return Where.on(shoot.line(), shoot.clear());
  }

  /** How much it matters beside others, as told in {@link Fault}. */
  double weight(double baseCaliper) {
    return subject.caliper() / baseCaliper * (1 + Math.min(1, measures.get(0).over()));
  }
}
