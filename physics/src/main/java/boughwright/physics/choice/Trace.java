// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.choice;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.stage.Trying;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToIntFunction;

/**
 * Something a plan does to the tree, and whether it can be undone.
 *
 * @param kind what it is
 * @param amount how many; of a planting angle the angle [rad]; of a set the part of the bend that
 *     stays when all is let go at once; of a break its odds [1]
 */
public record Trace(Kind kind, double amount) {

  /** What can be done to a tree. */
  public enum Kind {
    /** Guy-lines: untied. */
    LINES(true),
    /** Coiled wire: cut off. */
    COILS(true),
    /** Weights: taken off. */
    WEIGHTS(true),
    /** Raffia or tape: unwound. */
    WRAPS(true),
    /** Wood and shoots cut off. */
    CUTS(false),
    /** Slots, hollows and relief cuts. */
    CUT_WOOD(false),
    /** The planting angle: the roots follow it. */
    PLANTING(false),
    /** What the wood keeps of the bend at once, because it has flowed. */
    SET(false),
    /** Wood that may break. */
    BREAK(false);

    private final boolean undone;

    Kind(boolean undone) {
      this.undone = undone;
    }

    /** Whether it can be undone. */
    public boolean canBeUndone() {
      return undone;
    }
  }

  public Trace {
    Objects.requireNonNull(kind, "kind");
    if (!(amount > 0)) {
      throw new IllegalArgumentException(kind + " of " + amount);
    }
  }

  /** All that a plan does, what can be undone first. */
  static List<Trace> all(Plan plan, Trying.Tried tried, int cuts) {
    List<Trace> all = new ArrayList<>();
    List<Proposal> proposals = tried.request().proposals();
    add(all, Kind.LINES, count(proposals, one -> one.guyLines().size()));
    add(all, Kind.COILS, count(proposals, one -> one.coils().size()));
    add(all, Kind.WEIGHTS, count(proposals, one -> one.hungWeights().size()));
    add(all, Kind.WRAPS, count(proposals, one -> aids(one, true)));
    add(all, Kind.CUTS, cuts);
    add(all, Kind.CUT_WOOD, count(proposals, one -> aids(one, false)));
    plan.planting().ifPresent(planting -> add(all, Kind.PLANTING, Math.abs(planting.tilt())));
    tried.letGo().ifPresent(letGo -> add(all, Kind.SET, letGo.stays() / letGo.moved()));
    tried.trial().risk().ifPresent(risk -> add(all, Kind.BREAK, risk.breaking().p()));
    return List.copyOf(all);
  }

  private static void add(List<Trace> all, Kind kind, double amount) {
    if (amount > 0) {
      all.add(new Trace(kind, amount));
    }
  }

  private static int count(List<Proposal> proposals, ToIntFunction<Proposal> of) {
    return proposals.stream().mapToInt(of).sum();
  }

  private static int aids(Proposal proposal, boolean wraps) {
    return (int)
        proposal.aids().stream().filter(aid -> (aid.kind() == Aid.Kind.WRAP) == wraps).count();
  }
}
