// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.design.planted.PlantedFault;
import boughwright.modeller.design.planted.PlantedFaults;
import boughwright.modeller.design.planted.PlantedKind;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Planted trees reviewed, and what was found counted against what was planted. */
final class PlantedReview {
  /** Whether a fault found tells of a planted one of another name at the same place. */
  private static final Map<PlantedKind, Set<FaultKind>> NAMES =
      Map.ofEntries(
          Map.entry(PlantedKind.BAR_BRANCHES, Set.of(FaultKind.BAR_BRANCHES)),
          Map.entry(PlantedKind.WHORL, Set.of(FaultKind.WHORL)),
          Map.entry(PlantedKind.CROSSING, Set.of(FaultKind.CROSSING)),
          Map.entry(PlantedKind.PARALLEL, Set.of(FaultKind.PARALLEL)),
          Map.entry(PlantedKind.INSIDE_OF_CURVE, Set.of(FaultKind.INSIDE_CURVE)),
          Map.entry(PlantedKind.STRAIGHT, Set.of(FaultKind.STRAIGHT)),
          Map.entry(PlantedKind.REVERSE_TAPER, Set.of(FaultKind.REVERSE_TAPER)),
          Map.entry(PlantedKind.TOO_THICK, Set.of(FaultKind.TOO_THICK)),
          Map.entry(PlantedKind.TOO_LOW, Set.of(FaultKind.TOO_LOW)),
          Map.entry(PlantedKind.COMPETING_LEADERS, Set.of(FaultKind.COMPETING_LEADER)),
          Map.entry(PlantedKind.LONG_INTERNODE, Set.of(FaultKind.BARE_STRETCH)),
          Map.entry(PlantedKind.AT_VIEWER, Set.of(FaultKind.BRANCH_AT_VIEWER)));

  private final Map<PlantedKind, Integer> planted = new EnumMap<>(PlantedKind.class);
  private final Map<PlantedKind, Integer> found = new EnumMap<>(PlantedKind.class);
  private final Map<FaultKind, Integer> wrong = new EnumMap<>(FaultKind.class);
  private final List<String> notes = new ArrayList<>();

  /** Reviews a tree by the usual rules from the front of its one plan. */
  static Review review(Document document) {
    Plan plan = document.plans().get(0);
    Skeleton skeleton = new Skeleton(document.tree());
    WoodLeft wood = new WoodLeft(new Cutting(skeleton, plan.cuts()));
    FrontPose front =
        FrontPose.of(plan.frontAzimuth().orElseThrow(), plan.planting().orElse(new Planting(0, 0)));
    ReviewRules rules = ReviewRules.of(TreeStyle.UPRIGHT, WoodKind.BROADLEAF);
    return Review.of(wood, TrunkLine.of(wood, plan.apex()), Optional.of(front), rules);
  }

  PlantedReview add(PlantedFaults tree) {
    Set<Fault> unexplained = new HashSet<>(review(tree.document()).faults());
    List<Fault> all = List.copyOf(unexplained);
    for (PlantedFault fault : tree.faults()) {
      planted.merge(fault.kind(), 1, Integer::sum);
      List<Fault> telling = all.stream().filter(one -> tells(one, fault)).toList();
      if (telling.isEmpty()) {
        notes.add("seed " + tree.seed() + " missed " + fault);
      } else {
        found.merge(fault.kind(), 1, Integer::sum);
      }
      telling.forEach(unexplained::remove);
    }
    for (Fault fault : unexplained) {
      wrong.merge(fault.kind(), 1, Integer::sum);
      notes.add(
          "seed " + tree.seed() + " wrong " + fault.kind() + fault.segments() + fault.measures());
    }
    return this;
  }

  private static boolean tells(Fault fault, PlantedFault planted) {
    return NAMES.get(planted.kind()).contains(fault.kind())
        && !Collections.disjoint(fault.segments(), planted.segments());
  }

  int planted(PlantedKind kind) {
    return planted.getOrDefault(kind, 0);
  }

  int found(PlantedKind kind) {
    return found.getOrDefault(kind, 0);
  }

  /** Faults of a kind that nobody planted. */
  int wrong(FaultKind kind) {
    return wrong.getOrDefault(kind, 0);
  }

  FaultKind name(PlantedKind kind) {
    return NAMES.get(kind).iterator().next();
  }

  int planted() {
    return planted.values().stream().mapToInt(Integer::intValue).sum();
  }

  int found() {
    return found.values().stream().mapToInt(Integer::intValue).sum();
  }

  int wrong() {
    return wrong.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** What was missed or wrong, for the message of a failure. */
  List<String> notes() {
    return notes;
  }
}
