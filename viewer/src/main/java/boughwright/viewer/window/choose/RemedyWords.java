// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.review.Aftermath;
import boughwright.modeller.design.review.Fault;
import boughwright.modeller.design.review.Remedy;
import boughwright.modeller.design.review.WoundLeft;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.VisibleText;
import boughwright.physics.grow.CutTime;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.grow.Years;
import boughwright.viewer.scene.FaultWords;
import boughwright.viewer.window.work.Workspace;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is measured of a fault and what can be done about it, in words. */
final class RemedyWords {
  private final Workspace workspace;

  RemedyWords(Workspace workspace) {
    this.workspace = workspace;
  }

  /** What was measured, and by what it is a fault. */
  String measures(Fault fault) {
    String told =
        fault.measures().stream()
            .map(one -> FaultWords.measured(one) + ", " + FaultWords.limit(one))
            .collect(Collectors.joining("; "));
    return workspace.units().inWords(told)
        + " ("
        + FaultWords.origin(fault.measure().limit())
        + ").";
  }

  /** One thing that can be done, and what it leaves. */
  String option(Fault fault, Remedy option) {
    String where = option.place().map(one -> place(one.spot())).orElse("");
    String cuts =
        option.cuts().stream().map(RemedyWords::place).collect(Collectors.joining(" and "));
    String what =
        switch (option.action()) {
          case KEEP -> "Keep it: " + FaultWords.ifKept(fault.kind());
          case SHORTEN -> "Shorten " + cuts;
          case REMOVE -> "Remove " + cuts;
          case SACRIFICE ->
              "Keep it until the trunk is "
                  + workspace.units().length(option.until().orElseThrow())
                  + " thick"
                  + (where.isEmpty() ? "" : " at " + where)
                  + ", then remove "
                  + cuts;
          case GRAFT -> "Graft a branch" + (where.isEmpty() ? "" : " at " + where);
          case BEND -> "Bend it" + (where.isEmpty() ? "" : " from " + where);
        };
    return what + "." + option.aftermath().map(this::leaves).orElse("");
  }

  private static String place(Spot spot) {
    return VisibleText.of(spot.segment())
        + (spot.along() == 0
            ? ""
            : String.format(Locale.ROOT, ", %.0f %% along", 100 * spot.along()));
  }

  private String leaves(Aftermath after) {
    WoundLeft widest =
        after.wounds().stream().max(Comparator.comparingDouble(WoundLeft::width)).orElseThrow();
    WoundClosure closes =
        WoundClosure.of(
            widest.width(), YearlyRing.of(workspace.document().tree().setting()), time());
    return " Leaves a wound "
        + workspace.units().length(widest.width())
        + " wide, closed in "
        + years(closes.years())
        + (closes.isLate() ? ", too late to keep decay out" : "")
        + "; takes "
        + Math.round(100 * after.lost())
        + " % of the foliage"
        + (after.sessions() > 1 ? ", in " + after.sessions() + " sessions" : "")
        + (widest.advice().angle() == 0
            ? ". Cut along the wood it sits on, leave"
            : ". Cut at " + workspace.units().angle(widest.advice().angle()) + " to it, leave")
        + " a stub of "
        + workspace.units().length(widest.advice().stub())
        + " at first"
        + (widest.advice().depth() > 0
            ? ", later hollow it " + workspace.units().length(widest.advice().depth()) + " deep"
            : "")
        + ".";
  }

  private CutTime time() {
    return CutTime.of(
        Optional.of(LocalDate.now()), workspace.document().tree().condition().hemisphere());
  }

  static String years(Years years) {
    if (years.high() == 0) {
      return "no time";
    }
    if (Double.isInfinite(years.likely())) {
      return Double.isInfinite(years.low())
          ? "no time the tree has, as it does not grow"
          : one(years.low()) + " years at best";
    }
    return one(years.likely())
        + " years ("
        + one(years.low())
        + " to "
        + (Double.isInfinite(years.high()) ? "never" : one(years.high()))
        + ")";
  }

  private static String one(double years) {
    return String.format(Locale.ROOT, years < 10 ? "%.1f" : "%.0f", years);
  }
}
