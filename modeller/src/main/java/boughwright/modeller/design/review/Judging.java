// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.design.review.NotJudged.Reason;
import boughwright.modeller.plan.TreeStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What can be judged of a tree at all. */
final class Judging {
  /** What a broom is made of is no fault of it. */
  private static final Set<FaultKind> NO_FAULT_OF_A_BROOM =
      Set.of(
          FaultKind.BAR_BRANCHES,
          FaultKind.WHORL,
          FaultKind.SWELLING,
          FaultKind.STRAIGHT,
          FaultKind.TOO_THICK,
          FaultKind.TOO_LOW,
          FaultKind.COMPETING_LEADER,
          FaultKind.BRANCH_AT_VIEWER);

  private static final Set<FaultKind> ONE_TRUNK =
      Set.of(FaultKind.TOO_LOW, FaultKind.COMPETING_LEADER);

  private static final Set<FaultKind> OF_BRANCHES =
      Set.of(
          FaultKind.BAR_BRANCHES,
          FaultKind.WHORL,
          FaultKind.SWELLING,
          FaultKind.CROSSING,
          FaultKind.PARALLEL,
          FaultKind.INSIDE_CURVE,
          FaultKind.TOO_THICK,
          FaultKind.TOO_LOW,
          FaultKind.COMPETING_LEADER,
          FaultKind.BARE_STRETCH,
          FaultKind.BRANCH_AT_VIEWER);

  private static final Set<FaultKind> OF_HEIGHT =
      Set.of(
          FaultKind.TOO_LOW,
          FaultKind.COMPETING_LEADER,
          FaultKind.BRANCH_AT_VIEWER,
          FaultKind.APEX_AWAY);

  private Judging() {}

  static boolean isMovementJudged(Structure structure) {
    return structure.rules().style() != TreeStyle.BROOM
        && structure.main().line().pieces().size() > 1;
  }

  /** What is not judged; one reason for each kind. */
  static List<NotJudged> left(Structure structure, StraightStretches stretches) {
    Map<FaultKind, Reason> left = new EnumMap<>(FaultKind.class);
    if (!(structure.height() > 0)) {
      OF_HEIGHT.forEach(kind -> left.put(kind, Reason.NOT_ABOVE_BASE));
    }
    if (structure.front().isEmpty()) {
      left.put(FaultKind.BRANCH_AT_VIEWER, Reason.NO_FRONT);
      left.put(FaultKind.APEX_AWAY, Reason.NO_FRONT);
    }
    if (structure.main().line().pieces().size() == 1) {
      left.put(FaultKind.STRAIGHT, Reason.ONE_SEGMENT);
    } else if (stretches.isWhole()) {
      left.put(FaultKind.STRAIGHT, Reason.STRAIGHT_TRUNK);
    }
    if (structure.shoots().stream().skip(1).noneMatch(structure::isJudged)) {
      OF_BRANCHES.forEach(kind -> left.put(kind, Reason.NO_BRANCH));
    }
    ofStyle(structure.rules().style()).forEach(kind -> left.put(kind, Reason.STYLE));
    List<NotJudged> out = new ArrayList<>();
    left.forEach((kind, reason) -> out.add(new NotJudged(kind, reason)));
    return out;
  }

  private static Set<FaultKind> ofStyle(TreeStyle style) {
    return switch (style) {
      case UPRIGHT, SLANTING -> Set.of();
      case CASCADE -> Set.of(FaultKind.TOO_LOW, FaultKind.COMPETING_LEADER, FaultKind.APEX_AWAY);
      case BROOM -> NO_FAULT_OF_A_BROOM;
      case CLUMP, TWIN_TRUNK -> ONE_TRUNK;
    };
  }
}
