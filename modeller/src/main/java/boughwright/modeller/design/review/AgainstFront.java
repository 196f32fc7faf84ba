// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.TreeStyle;
import java.util.ArrayList;
import java.util.List;

/** What the chosen front does not want: only where a front is chosen. */
final class AgainstFront {
  private static final Direction3 TOWARD_VIEWER = new Direction3(0, -1, 0);

  private final Structure structure;

  AgainstFront(Structure structure) {
    this.structure = structure;
  }

  List<Found> find() {
    List<Found> out = new ArrayList<>();
    if (structure.front().isEmpty()) {
      return out;
    }
    if (structure.rules().style() != TreeStyle.BROOM && structure.height() > 0) {
      for (Shoot stem : structure.stems()) {
        structure.judgedOn(stem).stream()
            .filter(structure::isBranch)
            .forEach(shoot -> atViewer(stem, shoot, out));
      }
    }
    if (structure.rules().style() != TreeStyle.CASCADE) {
      apex(out);
    }
    return out;
  }

  private void atViewer(Shoot stem, Shoot shoot, List<Found> out) {
    double off = structure.seen(shoot.line().chord().vector()).direction().angleTo(TOWARD_VIEWER);
    double height = structure.heightOf(stem.line().point(shoot.seat().at())) / structure.height();
    if (off <= structure.limit(Limit.VIEWER_ANGLE)
        && height <= structure.limit(Limit.VIEWER_HEIGHT)) {
      out.add(
          Found.branch(
              FaultKind.BRANCH_AT_VIEWER,
              shoot,
              List.of(
                  structure.measured(Limit.VIEWER_ANGLE, off),
                  structure.measured(Limit.VIEWER_HEIGHT, height))));
    }
  }

  private void apex(List<Found> out) {
    WoodLine line = structure.main().line();
    Vector3 tip = structure.seen(line.tip().minus(structure.base()));
    double away = Math.atan2(tip.y(), tip.z());
    if (tip.z() > 0 && away > structure.limit(Limit.APEX_AWAY)) {
      double last = line.start(line.pieces().size() - 1);
      out.add(
          new Found(
              FaultKind.APEX_AWAY,
              List.of(line.spot(line.length()).segment()),
              Where.on(line, line.length()),
              List.of(structure.measured(Limit.APEX_AWAY, away)),
              new Found.Subject.Stretch(structure.main(), last, line.length())));
    }
  }
}
