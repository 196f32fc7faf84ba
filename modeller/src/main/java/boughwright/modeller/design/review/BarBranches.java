// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.plan.TreeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Pairs of branches of one height on opposite sides of a stem. */
final class BarBranches {
  private final Structure structure;
  private final List<Clusters.Cluster> whorls;

  BarBranches(Structure structure) {
    this.structure = structure;
    Clusters clusters = new Clusters(structure);
    whorls = clusters.all().stream().filter(clusters::isWhorl).toList();
  }

  List<Found> find() {
    List<Found> out = new ArrayList<>();
    if (structure.rules().style() == TreeStyle.BROOM) {
      return out;
    }
    for (Shoot stem : structure.stems()) {
      List<Shoot> branches = structure.judgedOn(stem).stream().filter(structure::isBranch).toList();
      for (int i = 0; i < branches.size(); i++) {
        for (int j = i + 1; j < branches.size() && isNear(branches.get(i), branches.get(j)); j++) {
          if (isBar(branches.get(i), branches.get(j))) {
            out.add(bar(branches.get(i), branches.get(j)));
          }
        }
      }
    }
    return out;
  }

  private static double spacing(Shoot low, Shoot high) {
    return (high.seat().at() - low.seat().at()) / low.seat().parentCaliper();
  }

  private boolean isNear(Shoot low, Shoot high) {
    return spacing(low, high) <= structure.limit(Limit.BAR_SPACING);
  }

  private boolean isBar(Shoot low, Shoot high) {
    double a = low.seat().caliper();
    double b = high.seat().caliper();
    Predicate<Clusters.Cluster> both = w -> w.shoots().contains(low) && w.shoots().contains(high);
    return low.seat().roundTo(high.seat()) >= structure.limit(Limit.BAR_OPPOSITE)
        && Math.min(a, b) >= structure.limit(Limit.BAR_ALIKE) * Math.max(a, b)
        && whorls.stream().noneMatch(both);
  }

  /** The thinner one may go. */
  private Found bar(Shoot low, Shoot high) {
    boolean lowThinner = low.seat().caliper() < high.seat().caliper();
    Shoot thinner = lowThinner ? low : high;
    Shoot thicker = lowThinner ? high : low;
    return new Found(
        FaultKind.BAR_BRANCHES,
        List.of(thinner.id(), thicker.id()),
        Found.mark(thinner),
        List.of(
            structure.measured(Limit.BAR_SPACING, spacing(low, high)),
            structure.measured(Limit.BAR_OPPOSITE, low.seat().roundTo(high.seat()))),
        new Found.Subject.Branches(List.of(thinner)));
  }
}
