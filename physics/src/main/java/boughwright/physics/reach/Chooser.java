// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Picks few and different choices of many: the nearest, the least risky and the gentlest of those
 * that come about as near, one line where the nearest takes two, then others that none beats in
 * every respect.
 */
final class Chooser {
  /** No more choices than a person compares. */
  private static final int MOST = 5;

  /** No more than this many that are only another way (a choice). */
  private static final int OTHERS = 2;

  /** Choices that come this near to the nearest count as as near [m]. */
  private static final double AS_NEAR = 3e-4;

  /** About as near: within this, or within the parts below, whichever is most [m] (a choice). */
  private static final double ABOUT = 0.002;

  private static final double ABOUT_OF_LIMB = 0.02;
  private static final double ABOUT_OF_START = 0.1;

  /** Less by this part is worth a line of its own [1] (a choice). */
  private static final double WORTH = 0.8;

  /** Anchors further apart than this are different [m] (a choice). */
  private static final double OTHER_ANCHOR = 0.04;

  /** Places further apart along the limb than this are different [m] (a choice). */
  private static final double OTHER_PLACE = 0.025;

  private final List<Candidate> all;
  private final Map<Candidate, Choice.Why> chosen = new LinkedHashMap<>();
  private final double about;

  private Chooser(List<Candidate> all, double startMiss, double limbLength) {
    this.all = all;
    about = Math.max(ABOUT, Math.max(ABOUT_OF_LIMB * limbLength, ABOUT_OF_START * startMiss));
  }

  /**
   * The choices in the order they are told, each with what it has over the others.
   *
   * @param all at least one
   */
  static Map<Candidate, Choice.Why> of(List<Candidate> all, double startMiss, double limbLength) {
    Chooser chooser = new Chooser(all, startMiss, limbLength);
    chooser.choose();
    return chooser.chosen;
  }

  private void choose() {
    double least = all.stream().mapToDouble(Candidate::miss).min().orElseThrow();
    Candidate nearest =
        all.stream()
            .filter(one -> one.miss() <= least + AS_NEAR)
            .min(
                Comparator.comparingInt(Candidate::lines)
                    .thenComparingDouble(one -> one.risk().breaking()))
            .orElseThrow();
    chosen.put(nearest, Choice.Why.NEAREST);
    List<Candidate> near = all.stream().filter(one -> one.miss() <= least + about).toList();
    less(near, one -> one.risk().breaking(), Choice.Why.LEAST_RISK);
    less(near, Candidate::pull, Choice.Why.LEAST_PULL);
    if (nearest.lines() > 1) {
      add(
          all.stream()
              .filter(one -> one.lines() == 1)
              .min(Comparator.comparingDouble(Candidate::miss)),
          Choice.Why.ONE_LINE);
    }
    coils();
    near.stream()
        .filter(this::isUnbeaten)
        .sorted(Comparator.comparingDouble(Candidate::miss))
        .filter(this::isOther)
        .limit(OTHERS)
        .forEach(one -> add(Optional.of(one), Choice.Why.ANOTHER_WAY));
  }

  /** The nearest that a coil holds alone, and one with a line where that comes nearer. */
  private void coils() {
    Optional<Candidate> alone = wired(1);
    add(alone, Choice.Why.COIL);
    double worth = alone.map(Candidate::miss).orElse(Double.POSITIVE_INFINITY) - AS_NEAR;
    add(wired(2).filter(one -> one.miss() < worth), Choice.Why.COIL_AND_LINE);
  }

  private Optional<Candidate> wired(int lines) {
    return all.stream()
        .filter(one -> one.winding().isPresent() && one.lines() == lines)
        .min(Comparator.comparingDouble(Candidate::miss));
  }

  private void less(List<Candidate> near, ToDoubleFunction<Candidate> of, Choice.Why why) {
    double have = chosen.keySet().stream().mapToDouble(of).min().orElseThrow();
    add(
        near.stream()
            .filter(one -> of.applyAsDouble(one) < WORTH * have && isOther(one))
            .min(Comparator.comparingDouble(of)),
        why);
  }

  private void add(Optional<Candidate> one, Choice.Why why) {
    if (one.isPresent() && chosen.size() < MOST && isOther(one.get())) {
      chosen.put(one.get(), why);
    }
  }

  /** Whether no other is at least as good in every respect and better in one. */
  private boolean isUnbeaten(Candidate one) {
    return all.stream().noneMatch(other -> beats(other, one));
  }

  private static boolean beats(Candidate other, Candidate one) {
    double[] a = respects(other);
    double[] b = respects(one);
    boolean better = false;
    for (int k = 0; k < a.length; k++) {
      if (a[k] > b[k]) {
        return false;
      }
      better |= a[k] < b[k];
    }
    return better;
  }

  private static double[] respects(Candidate one) {
    return new double[] {one.miss(), one.risk().breaking(), one.pull(), one.lines()};
  }

  private boolean isOther(Candidate one) {
    return chosen.keySet().stream().noneMatch(have -> isAlike(have, one));
  }

  /** Whether two choices have the same number of lines, each with its like in the other. */
  private static boolean isAlike(Candidate a, Candidate b) {
    return a.lines() == b.lines()
        && isAlike(a.winding(), b.winding())
        && a.ties().stream().allMatch(tie -> b.ties().stream().anyMatch(o -> isAlike(tie, o)));
  }

  private static boolean isAlike(Optional<Winding> a, Optional<Winding> b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.isEmpty() && b.isEmpty();
    }
    double apart = a.get().place().alongPath() - b.get().place().alongPath();
    return a.get().coil().metal() == b.get().coil().metal() && Math.abs(apart) <= OTHER_PLACE;
  }

  private static boolean isAlike(Tie a, Tie b) {
    return a.anchor().at().distance(b.anchor().at()) <= OTHER_ANCHOR
        && Math.abs(a.place().alongPath() - b.place().alongPath()) <= OTHER_PLACE;
  }
}
