// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.PadPressure;
import boughwright.physics.trial.HardwareFinding.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether the pad of a line spares the bark and stays, and whether the crotch wants binding. */
final class PadCheck {
  /** Any pad is this long [m]. Common practice, no source. */
  private static final double SHORTEST = 10e-3;

  /** A limb this thick, or this part of its stem, tears rather than bends at its crotch. */
  private static final double THICK = 20e-3;

  private static final double THICK_PART = 0.5;

  private final LineAtWork at;
  private final OptionalDouble across;

  /**
   * For a line.
   *
   * @param across crushing stress of the wood across the grain, if it is known [Pa]
   */
  PadCheck(LineAtWork at, OptionalDouble across) {
    this.at = at;
    this.across = across;
  }

  double diameter() {
    return at.diameter(at.line().at());
  }

  double lengthNeeded() {
    return PadPressure.lengthNeeded(at.pull(), diameter(), across);
  }

  OptionalDouble pressure() {
    OptionalDouble length = at.line().tackle().padLength();
    return length.isPresent()
        ? OptionalDouble.of(PadPressure.of(at.pull(), length.getAsDouble(), diameter()))
        : OptionalDouble.empty();
  }

  /** Part of the pull that runs outward along the branch [1]. */
  private double outward() {
    return at.toward().dot(at.axis().vector());
  }

  /** Angle by which the line is off square to the branch [rad]. */
  double offSquare() {
    return Math.asin(Math.min(1, Math.abs(outward())));
  }

  List<HardwareFinding> findings() {
    List<HardwareFinding> out = new ArrayList<>();
    out.add(bark());
    out.add(sliding());
    crotch(out);
    return out;
  }

  private HardwareFinding bark() {
    double needed = Math.max(SHORTEST, lengthNeeded());
    String pad = String.format(Locale.ROOT, "a pad %.0f mm long", Math.ceil(1e3 * needed));
    OptionalDouble pressure = pressure();
    if (pressure.isEmpty()) {
      return HardwareFinding.look(
          Topic.PAD,
          "Put "
              + pad
              + " or longer under the line, of rubber or leather, on wood "
              + String.format(Locale.ROOT, "%.0f mm thick.", 1e3 * diameter()));
    }
    String presses =
        String.format(Locale.ROOT, "The pad presses with %.2f MPa", pressure.getAsDouble() / 1e6);
    if (pressure.getAsDouble() > PadPressure.crushes(across)) {
      return HardwareFinding.no(
          Topic.PAD, presses + ", which crushes bark and cambium: use " + pad + ".");
    }
    return pressure.getAsDouble() > PadPressure.bears(across)
        ? HardwareFinding.look(
            Topic.PAD, presses + ", near what living bark bears: use " + pad + ".")
        : HardwareFinding.fine(Topic.PAD, presses + ", which living bark bears.");
  }

  private HardwareFinding sliding() {
    boolean outward = outward() > 0;
    String side = outward ? "toward the tip" : "toward the trunk";
    String angle =
        String.format(
            Locale.ROOT,
            "The line is %.0f° off square to the branch in the bent pose",
            Math.toDegrees(offSquare()));
    Optional<PadStop> stop = PadStop.of(at.skeleton(), at.line().at(), outward);
    return switch (PadPressure.grip(offSquare())) {
      case STAYS -> HardwareFinding.fine(Topic.PAD, angle + ": the pad stays.");
      case MAY_SLIDE ->
          HardwareFinding.look(
              Topic.PAD,
              angle
                  + ": the pad may slide "
                  + side
                  + (stop.isPresent()
                      ? "; " + stop.get().words() + "."
                      : ". Stop it on that side."));
      case SLIDES ->
          stop.isPresent()
              ? HardwareFinding.look(
                  Topic.PAD, angle + ": the pad slides " + side + "; " + stop.get().words() + ".")
              : HardwareFinding.no(
                  Topic.PAD,
                  angle
                      + ": the pad slides "
                      + side
                      + " unless it is lashed: tie it outside a side branch, or move the anchor.");
    };
  }

  private void crotch(List<HardwareFinding> out) {
    Skeleton skeleton = at.skeleton();
    int i = skeleton.indexOf(at.line().at().segment());
    while (skeleton.parent(i) != Skeleton.NONE && skeleton.joint(i) != Joint.UNION) {
      i = skeleton.parent(i);
    }
    int stem = skeleton.parent(i);
    if (stem == Skeleton.NONE) {
      return;
    }
    double limb = skeleton.segment(i).caliperStart();
    double ratio = limb / skeleton.caliper(stem, skeleton.segment(i).along());
    Vector3 acute = UnionScan.crotchSide(skeleton, stem, i);
    boolean opens = at.toward().dot(acute) < 0;
    if (opens && (limb >= THICK || ratio >= THICK_PART)) {
      out.add(
          HardwareFinding.look(
              Topic.CROTCH,
              String.format(
                  Locale.ROOT,
                  "It opens the crotch of \"%s\", %.0f mm thick: bind the crotch over pads before"
                      + " you pull (common practice, no source).",
                  skeleton.segment(i).id(),
                  1e3 * limb)));
    }
  }
}
