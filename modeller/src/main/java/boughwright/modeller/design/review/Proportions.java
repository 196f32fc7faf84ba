// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.tree.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Leaders that compete, branches too thick for their place, branches too low. */
final class Proportions {
  private final Structure structure;
  private final WoodLine trunk;

  Proportions(Structure structure) {
    this.structure = structure;
    trunk = structure.main().line();
  }

  List<Found> find() {
    List<Found> out = new ArrayList<>(leaders());
    Set<String> told = out.stream().map(f -> f.segments().get(0)).collect(Collectors.toSet());
    for (Shoot stem : structure.stems()) {
      structure.judgedOn(stem).stream()
          .filter(shoot -> structure.isBranch(shoot) && !told.contains(shoot.id()))
          .forEach(shoot -> tooThick(stem, shoot, out));
    }
    structure.judgedOn(structure.main()).stream()
        .filter(shoot -> structure.isBranch(shoot) && !told.contains(shoot.id()))
        .forEach(shoot -> tooLow(shoot, out));
    return out;
  }

  private List<Found> leaders() {
    TreeStyle style = structure.rules().style();
    double apex = structure.heightOf(trunk.tip());
    if (style != TreeStyle.UPRIGHT && style != TreeStyle.SLANTING || !(apex > 0)) {
      return List.of();
    }
    List<Found> out = new ArrayList<>();
    for (Shoot shoot : structure.judgedOn(structure.main())) {
      List<Measured> measures = leader(shoot, apex);
      if (!measures.isEmpty()) {
        out.add(Found.branch(FaultKind.COMPETING_LEADER, shoot, measures));
      }
    }
    return out;
  }

  /**
   * What makes a shoot a leader beside the first: it reaches as high, or it is trunk as thick as
   * what goes on; empty if it is none.
   */
  private List<Measured> leader(Shoot shoot, double apex) {
    Union seat = shoot.seat();
    double above = trunk.caliper(Math.min(trunk.length(), seat.at() + seat.parentCaliper() / 2));
    double ratio = seat.caliper() / above;
    double tip = structure.heightOf(shoot.line().tip()) / apex;
    double upright = upright(shoot);
    if (ratio < structure.limit(Limit.LEADER_CALIPER)
        || upright > structure.limit(Limit.LEADER_ANGLE)) {
      return List.of();
    }
    double length = shoot.line().length() / structure.height();
    boolean isTall =
        tip >= structure.limit(Limit.LEADER_HEIGHT)
            && length >= structure.limit(Limit.LEADER_LENGTH);
    List<Measured> measures = new ArrayList<>();
    if (isTall) {
      measures.add(structure.measured(Limit.LEADER_CALIPER, ratio));
      measures.add(structure.measured(Limit.LEADER_HEIGHT, tip));
    } else if (shoot.kind() == Kind.TRUNK && ratio > structure.limit(Limit.LEADER_THICK)) {
      measures.add(structure.measured(Limit.LEADER_THICK, ratio));
    } else {
      return List.of();
    }
    measures.add(structure.measured(Limit.LEADER_ANGLE, upright));
    return measures;
  }

  /** Off upright, or off the trunk that goes on, whichever is less [rad]. */
  private double upright(Shoot shoot) {
    Vector3 own = structure.seen(shoot.line().chord().vector());
    double off = own.direction().angleTo(Direction3.UP);
    Point3 from = trunk.point(shoot.seat().at());
    if (trunk.tip().distance(from) < shoot.seat().parentCaliper()) {
      return off;
    }
    Direction3 goesOn = trunk.tip().minus(from).direction();
    return Math.min(off, shoot.line().chord().angleTo(goesOn));
  }

  private void tooThick(Shoot stem, Shoot shoot, List<Found> out) {
    double aspect = shoot.seat().aspect();
    boolean inCrown =
        stem.isMain() && shoot.seat().at() > structure.limit(Limit.CROWN) * trunk.length();
    if (structure.rules().style() == TreeStyle.BROOM
        || inCrown
        || aspect <= structure.limit(Limit.BRANCH_CALIPER)) {
      return;
    }
    List<Measured> measures = new ArrayList<>();
    measures.add(structure.measured(Limit.BRANCH_CALIPER, aspect));
    if (aspect > structure.limit(Limit.CODOMINANT)) {
      measures.add(structure.measured(Limit.CODOMINANT, aspect));
    }
    out.add(Found.branch(FaultKind.TOO_THICK, shoot, measures));
  }

  private void tooLow(Shoot shoot, List<Found> out) {
    TreeStyle style = structure.rules().style();
    if (style != TreeStyle.UPRIGHT && style != TreeStyle.SLANTING || !(structure.height() > 0)) {
      return;
    }
    double share = structure.heightOf(trunk.point(shoot.seat().at())) / structure.height();
    if (share < structure.limit(Limit.FIRST_BRANCH)) {
      out.add(
          Found.branch(
              FaultKind.TOO_LOW, shoot, List.of(structure.measured(Limit.FIRST_BRANCH, share))));
    }
  }
}
