// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.CoilShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a person should look at in the coils of a plan. */
final class CoilNotes {
  private CoilNotes() {}

  static List<String> of(Skeleton skeleton, List<Proposal> proposals) {
    List<String> out = new ArrayList<>();
    for (Proposal proposal : proposals) {
      for (Coil coil : proposal.coils()) {
        note(skeleton, coil, out);
      }
      boolean nothingBends =
          !proposal.coils().isEmpty()
              && proposal.handBends().isEmpty()
              && proposal.guyLines().isEmpty()
              && proposal.hungWeights().isEmpty();
      if (nothingBends) {
        out.add(
            "Proposal "
                + proposal.id()
                + " has a coil, and nothing that bends: a coil only holds. Give it a hand bend or a"
                + " line.");
      }
    }
    return out;
  }

  private static void note(Skeleton skeleton, Coil coil, List<String> out) {
    CoilPath path = CoilPath.of(skeleton, coil);
    if (path.stretches().isEmpty()) {
      out.add(about(coil) + " starts where it ends, so there is no way to wind it along.");
      return;
    }
    CoilAnchorage start = CoilAnchorage.of(skeleton, path);
    if (!start.isEnough()) {
      out.add(about(coil) + ": " + start.words() + ". It is counted as if it held.");
    }
    double least = Double.POSITIVE_INFINITY;
    for (CoilPath.Stretch stretch : path.stretches()) {
      for (double s : new double[] {stretch.from(), stretch.to()}) {
        double caliper =
            skeleton.caliper(stretch.segment(), s / skeleton.length(stretch.segment()));
        least = Math.min(least, CoilShape.of(coil).gap(caliper));
      }
    }
    if (least < 0) {
      out.add(
          about(coil)
              + ": its turns do not fit side by side. Wind it at a smaller angle to the"
              + " branch, or with fewer or thinner strands.");
    }
  }

  private static String about(Coil coil) {
    return String.format(
        Locale.ROOT,
        "The coil from %s to %s (%s %.1f mm)",
        coil.from().segment(),
        coil.to().segment(),
        coil.metal().word(),
        1000 * coil.gauge());
  }
}
