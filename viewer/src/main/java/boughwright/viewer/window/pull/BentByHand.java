// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.plan.Proposal;
import boughwright.physics.reach.Choice;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.CoilWork;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A bend that a hand makes and wire holds, as it is told.
 *
 * @param proposal its name
 * @param force what the hand pulls at the end [N]
 * @param move how far it goes [m]
 * @param work how the wire is wound
 */
record BentByHand(String proposal, double force, double move, CoilWork work) {
  /**
   * Of what is pulled its own bend, of a plan the one whose hand pulls hardest; once all is worked
   * out it is told as {@code bend} tells it. Empty where no wire holds anything, or while that is
   * not known.
   */
  static Optional<BentByHand> of(Figures.Subject subject) {
    List<BentByHand> worked = subject.full().map(BentByHand::all).orElse(List.of());
    if (subject.draft().isEmpty()) {
      return worked.stream().max(Comparator.comparingDouble(BentByHand::force));
    }
    Optional<Choice> found = subject.draft().get().coil();
    // what is pulled is the last bend of its plan
    return found.isEmpty() || worked.isEmpty()
        ? found.flatMap(BentByHand::found)
        : Optional.of(worked.get(worked.size() - 1));
  }

  private static Optional<BentByHand> found(Choice choice) {
    return choice
        .bend()
        .map(
            bend ->
                new BentByHand(
                    choice.proposal().id(), bend.force(), bend.hand().move(), bend.work()));
  }

  private static List<BentByHand> all(Trying.Tried tried) {
    return tried.heldBy().coils().stream()
        .filter(hold -> !hold.hands().isEmpty() && !hold.coils().isEmpty())
        .map(BentByHand::told)
        .toList();
  }

  private static BentByHand told(CoilHold hold) {
    CoilHold.HandPull hand = hold.hands().get(0);
    return new BentByHand(hold.proposal(), hand.force(), hand.move(), hold.coils().get(0));
  }

  /** Whether a plan has such a bend, and it is still being worked out. */
  static boolean isToCome(Figures.Subject subject) {
    return subject.draft().isEmpty()
        && subject.full().isEmpty()
        && subject.plan().proposals().stream().anyMatch(BentByHand::isWired);
  }

  private static boolean isWired(Proposal one) {
    return !one.handBends().isEmpty() && !one.coils().isEmpty();
  }
}
