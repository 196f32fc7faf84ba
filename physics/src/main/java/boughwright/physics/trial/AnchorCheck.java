// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.Kind;
import boughwright.physics.hold.AnchorScrew;
import boughwright.physics.hold.PadPressure;
import boughwright.physics.trial.HardwareFinding.Topic;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether the anchor of a line takes its pull, as far as anybody can tell. */
final class AnchorCheck {
  /** A fixed anchor this near to one of the list is that one [m]. */
  private static final double SAME_POINT = 2e-3;

  /** A screw a person has at hand [m]. Assumption. */
  private static final double USUAL_SCREW = 4e-3;

  /** A trial pull over the pull to come [1]. Common practice, no source. */
  private static final double TEST = 1.5;

  /** An anchor on the tree that gives way by more takes part in the design [m]. Assumption. */
  private static final double MOVES = 3e-3;

  /** Strain of an anchor branch from which it is bent for good [1]: where wood begins to flow. */
  private static final double BENT = 0.0025;

  private final LineAtWork at;

  AnchorCheck(LineAtWork at) {
    this.at = at;
  }

  /** What a fixed anchor is: as the line says, or as the list of anchors does. */
  static Optional<AnchorKind> kind(LineAtWork at) {
    Optional<AnchorKind> said = at.line().tackle().anchorKind();
    if (said.isPresent() || !(at.line().anchor() instanceof Anchor.Fixed fixed)) {
      return said;
    }
    return at.skeleton().tree().setting().anchors().stream()
        .filter(one -> one.at().distance(fixed.point()) <= SAME_POINT)
        .map(AnchorPoint::kind)
        .findFirst();
  }

  HardwareFinding finding() {
    if (at.line().anchor() instanceof Anchor.OnTree onTree) {
      return onTree(onTree.spot());
    }
    String test =
        String.format(
            Locale.ROOT,
            "pull on it with a scale to %.0f N (%.1f kg) before you trust it",
            TEST * at.pull(),
            TEST * at.pull() / 9.80665);
    Optional<AnchorKind> kind = kind(at);
    if (kind.isEmpty()) {
      return HardwareFinding.look(Topic.ANCHOR, "Nothing says what the anchor is: " + test + ".");
    }
    return switch (kind.get()) {
      case SCREW ->
          HardwareFinding.look(
              Topic.ANCHOR,
              String.format(
                  Locale.ROOT,
                  "A screw of 4 mm in a wet softwood box wants at least %.0f mm of thread in the"
                      + " wood, drawn straight out; pulled across it holds more.",
                  Math.ceil(1e3 * AnchorScrew.threadNeeded(at.pull(), USUAL_SCREW))));
      case RIM ->
          HardwareFinding.look(
              Topic.ANCHOR,
              "What a rim takes is not known: "
                  + test
                  + "; a root or trunk stub is better (common practice, no source).");
      case PEG ->
          HardwareFinding.look(
              Topic.ANCHOR,
              "What a peg takes hangs on the soil and is not known: " + test + ", in wet soil.");
      case FRAME ->
          HardwareFinding.look(
              Topic.ANCHOR,
              "A frame takes it if container and frame are fastened to each other: " + test + ".");
    };
  }

  private HardwareFinding onTree(Spot spot) {
    PathSample sample = at.sample(spot);
    int i = at.skeleton().indexOf(spot.segment());
    double moved = sample.point().distance(at.skeleton().point(i, sample.along()));
    double strain =
        at.result().segment(spot.segment()).map(SegmentTrial::bendingStrain).orElse(0.0);
    Kind kind = at.skeleton().segment(i).kind();
    String what =
        String.format(
            Locale.ROOT,
            "Tied to \"%s\" (%s, %.0f mm thick): it gives way by %.1f mm and is bent to %.2f %%",
            spot.segment(),
            kind.name().toLowerCase(Locale.ROOT),
            1e3 * at.diameter(spot),
            1e3 * moved,
            100 * strain);
    String pad =
        String.format(
            Locale.ROOT,
            "; pad it like the branch, at least %.0f mm long.",
            Math.ceil(
                1e3
                    * Math.max(
                        0.01,
                        PadPressure.lengthNeeded(
                            at.pull(), at.diameter(spot), OptionalDouble.empty()))));
    if (kind == Kind.DEADWOOD) {
      return HardwareFinding.look(
          Topic.ANCHOR, what + "; dead wood may be rotten inside: test it first.");
    }
    return moved > MOVES || strain > BENT
        ? HardwareFinding.look(Topic.ANCHOR, what + ", which the trial counts" + pad)
        : HardwareFinding.fine(Topic.ANCHOR, what + pad);
  }
}
