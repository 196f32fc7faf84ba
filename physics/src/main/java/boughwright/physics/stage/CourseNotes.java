// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Plan;
import boughwright.physics.grow.GrowthCalendar;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.wood.Creep;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

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
            + " do not turn with it. Bend first and give it a season; loosen these lines before the"
            + " tree is lifted; afterwards tie them to the same places as seen from the tree, each"
            + " to the length it had.");
  }

  /** How fast it grows, and when. */
  String growth(YearlyRing ring, GrowthCalendar calendar) {
    String when;
    if (calendar.isSeasonal()) {
      when =
          "New wood is laid from "
              + calendar.season().span(calendar.half().orElseThrow())
              + " (from memory); outside that season nothing locks a bend.";
    } else {
      when =
          (calendar.start().isEmpty() ? "The day of the first pull" : "The half of the earth")
              + " is not given, so growth is spread over the year; in truth nothing locks a bend in"
              + " dormancy.";
    }
    return "Growth: " + ring.basis() + ". " + when;
  }

  /** How the pull falls. */
  String wood(boolean elastic) {
    if (elastic) {
      return "Wood taken as straight-line elastic does not creep or set here: only new wood round it"
          + " holds the bend.";
    }
    Means means = Means.of(request.proposals());
    if (means.weights() && !means.lines() && !means.coils()) {
      return "Under a hung weight the bend goes on growing as the wood creeps, most of it in the first"
          + " days: hang less than the whole at first, and look after a day.";
    }
    return CourseWords.format(
        "Held at fixed length, live wood lets go of about %.0f %% of its pull in a day and %.0f %%"
            + " in a month (%.0f to %.0f %%; Ray and Bret-Harte 2019, and assumptions). Waiting"
            + " lowers the pull, hardly the odds of a crack.",
        gone(Creep.MIDDLE, 1), gone(Creep.MIDDLE, 30), gone(Creep.LOW, 30), gone(Creep.HIGH, 30));
  }

  /** What the hands bend and nothing holds. */
  List<String> unheld() {
    List<String> hands =
        request.proposals().stream()
            .filter(one -> !Means.of(List.of(one)).hold())
            .flatMap(one -> one.handBends().stream().map(HandBend::id))
            .toList();
    return hands.isEmpty()
        ? List.of()
        : List.of(
            "Nothing holds what "
                + String.join(", ", hands)
                + " bends by hand: let go, it springs back. Give the same proposal a coil or a"
                + " line.");
  }

  /** Holders that let most of a bend by hand go, which all that follows starts from. */
  static List<String> weak(double kept) {
    return kept >= CourseOptions.USUAL_TARGET
        ? List.of()
        : List.of(
            CourseWords.format(
                "Let go, it springs back to %.0f %% of the bend: it needs stronger wire, a line, or"
                    + " to be bent further by hand. What is said of later times counts from there.",
                100 * kept));
  }

  /** What becomes of the day on which the person wants it off, or of the bend without one. */
  List<String> stays(CourseBand band, OptionalDouble release) {
    Course.Span stays = band.stays(options.target());
    double kept = 100 * options.target();
    if (release.isPresent()) {
      double day = release.getAsDouble();
      if (stays.likely().isPresent() && stays.likely().getAsDouble() <= day) {
        return List.of();
      }
      Range lost = band.springbackAt(day);
      String until =
          stays.likely().isPresent()
              ? "until about " + CourseWords.weeks(stays.likely().getAsDouble())
              : "more than two years";
      return List.of(
          CourseWords.format(
              "Taken off after %s, as planned, it loses about %.0f %% of the bend (%.0f to %.0f %%):"
                  + " for %.0f %% to stay, hold it %s.",
              CourseWords.weeks(day),
              100 * lost.middle(),
              100 * lost.low(),
              100 * lost.high(),
              kept,
              until));
    }
    return stays.likely().isPresent()
        ? List.of()
        : List.of(
            CourseWords.format(
                "Held for two years it may still not stay to %.0f %% by itself: count on tying or"
                    + " wiring it again, or bend a little further than wanted.",
                kept));
  }

  private static double gone(Creep creep, double days) {
    return 100 * (1 - creep.left(days * GrowthCalendar.DAY));
  }
}
