// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.window.look.Explanation;
import java.util.Locale;
import java.util.Optional;

/** What the numbers of a bend are. */
final class Explanations {
  private static final String GUESSED =
      "A guess from the margins of this one pose. It is within a factor of 1.6 of the odds that are"
          + " worked out, above 1 in 50; below that it is too low.";

  private static final String MARGIN =
      "Each part of the wood against what it bears, with all that is not known of it.";

  private final String source;
  private final String exact;

  private Explanations(String source, String exact) {
    this.source = source;
    this.exact = exact;
  }

  /** For a trial of a tree. */
  static Explanations of(Tree tree, TrialResult trial) {
    Optional<Species> species = TrialSpecies.limitsOf(tree);
    String wood =
        species
            .map(
                one ->
                    "Wood values of "
                        + one.botanicalName()
                        + one.proxyFor().map(words -> " (" + words + ")").orElse("")
                        + ", and the calipers you measured.")
            .orElse("The modulus you gave, and the calipers you measured.");
    double error = trial.error().tension();
    String exact =
        Double.isFinite(error)
            ? String.format(
                Locale.ROOT, "The computation is exact to %.2g %%. ", Math.max(1e-4, 100 * error))
            : "";
    return new Explanations(wood, exact);
  }

  Explanation pull() {
    return new Explanation(
        "What the line pulls once it is drawn in so far. A spring balance in the line shows it.",
        exact
            + "Moduli of branches differ by a fifth and more from one to the next; the range says"
            + " how far.",
        source);
  }

  Explanation force() {
    return new Explanation(
        "What your hand has to pull to hold it there.",
        exact + "Moduli of branches differ by a fifth and more from one to the next.",
        source);
  }

  Explanation drawnIn() {
    return new Explanation(
        "How much shorter the line is than the straight distance, pad to anchor, as measured.",
        exact + "It hardly depends on the wood, only on the shape.",
        "The shape you measured.");
  }

  Explanation turns(String tackle) {
    return new Explanation(
        "Turns of the tightener that draw the line in so far, from how it is tied now.",
        "A strand that stretches or slips in its knots takes more.",
        "Computed from the geometry of the twist or the thread. Tackle: " + tackle + ".");
  }

  Explanation bentByHand() {
    return new Explanation(
        "How far your hand bends the place beyond where it stood, so that it comes to rest there"
            + " once you let go and the wood springs back against the wire.",
        exact + "How far it springs back differs with the wood; watch where it comes to rest.",
        source);
  }

  Explanation wound() {
    return new Explanation(
        "Turns of the wire from the wood that carries the branch to just beyond your hand.",
        "To a turn or so; the bark decides where each one lies.",
        "Computed from the calipers you measured, at 50 degrees to the branch: the middle of 45 to"
            + " 60 (common practice, no source).");
  }

  Explanation strain() {
    return new Explanation(
        "Wood radius times the curvature that is added, where that is largest.",
        exact + "A caliper misread by 3 % makes 3 % here.",
        source);
  }

  Explanation guessed() {
    return new Explanation(
        "The odds that anything breaks: crack, split, shear or tear.", GUESSED, MARGIN);
  }

  Explanation drawn(int samples) {
    return new Explanation(
        "The odds that anything breaks: crack, split, shear or tear. \"Could be\" is the bad end of"
            + " what nobody knows of this species and tree: in one of twenty such cases it is worse.",
        "Tried "
            + samples
            + " times, what is not known drawn by lot each time. Pull tests narrow it.",
        source + " " + MARGIN);
  }

  Explanation kink(int samples) {
    return new Explanation(
        "The odds that the inside of the bend wrinkles into a kink, which a limb outlives.",
        samples > 0
            ? "Tried " + samples + " times, what is not known drawn by lot each time."
            : GUESSED,
        source);
  }

  Explanation miss() {
    return new Explanation(
        "How far the place you pulled stays from where your hand let go.",
        exact + "It hardly depends on the wood, only on the shape.",
        "The shape you measured.");
  }

  Explanation verdict() {
    return new Explanation(
        "What to do, from the odds of breaking and kinking, the season, and what the tree has been"
            + " through.",
        "As sure as the odds it is made of.",
        "Bounds are choices of this program; see verdicts in the manual.");
  }
}
