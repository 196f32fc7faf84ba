// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Plan;
import boughwright.physics.grow.GrowthCalendar;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.wood.Creep;
import java.util.ArrayList;
import java.util.List;

/** What a course rests on and what to watch. */
final class CourseNotes {
  private final TrialRequest request;
  private final CourseOptions options;

  CourseNotes(TrialRequest request, CourseOptions options) {
    this.request = request;
    this.options = options;
  }

  /** The order of bending and repotting, where anchors move at repotting; else nothing. */
  List<String> repotting() {
    Plan plan = request.plan();
    boolean tilts = plan.planting().isPresent() && plan.planting().get().tilt() != 0;
    List<String> fixed = new ArrayList<>();
    request.proposals().stream()
        .flatMap(proposal -> proposal.guyLines().stream())
        .filter(line -> line.anchor() instanceof Anchor.Fixed)
        .map(GuyLine::id)
        .forEach(fixed::add);
    if (fixed.isEmpty() || !(tilts || options.repots())) {
      return List.of();
    }
    return List.of(
        (tilts ? "The plan gives the tree another planting angle" : "The tree is repotted")
            + ", and the anchors of "
            + String.join(", ", fixed)
            + " do not turn with it. Bend first, with the tree as measured; give it a season; to"
            + " repot, loosen these lines before the tree is lifted, turn and tie it in, then tie"
            + " them again to anchors at the same places as seen from the tree, each to the length"
            + " it had.");
  }

  List<String> growth(YearlyRing ring, GrowthCalendar calendar) {
    List<String> out = new ArrayList<>();
    out.add("Growth: " + ring.basis() + ".");
    if (calendar.isSeasonal()) {
      out.add(
          "New wood is laid from "
              + calendar.season().span(calendar.half().orElseThrow())
              + " (from memory and from conifers measured elsewhere); out of that season nothing"
              + " locks a bend, however long it is held.");
    } else {
      out.add(
          (calendar.start().isEmpty() ? "The day of the first pull" : "The half of the earth")
              + " is not given, so growth is spread evenly over the year; in truth nothing locks a"
              + " bend in dormancy.");
    }
    return out;
  }

  List<String> wood(boolean elastic) {
    if (elastic) {
      return List.of(
          "Wood that is taken as straight-line elastic does not flow, creep or set here; only new"
              + " wood round it holds the bend.");
    }
    return List.of(
        CourseWords.format(
            "Live wood at fixed length lets go of %.0f %% of its pull in a day and %.0f %% in a"
                + " month (%.0f to %.0f %%; retarded bending of living branches 30 to 50 %%: Ray"
                + " and Bret-Harte 2019; how it spreads over time and what sets are assumptions).",
            gone(Creep.MIDDLE, 1),
            gone(Creep.MIDDLE, 30),
            gone(Creep.LOW, 30),
            gone(Creep.HIGH, 30)),
        "Stages lower the pull, and with it tearing and shear; they hardly lower the odds of a"
            + " crack, which goes by strain (from memory of tests under lasting load).",
        "Growers wait one to three weeks between stages and add 0.1 to 0.25 % of strain at each"
            + " (common practice, no source).");
  }

  private static double gone(Creep creep, double days) {
    return 100 * (1 - creep.left(days * GrowthCalendar.DAY));
  }
}
