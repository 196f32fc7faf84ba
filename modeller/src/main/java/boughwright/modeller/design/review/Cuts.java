// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.design.shape.CutFace;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import java.util.List;
import java.util.OptionalDouble;

/** Works out what cuts leave. */
final class Cuts {
  /** Share of the length at which the trunk's taper is read [1]. */
  private static final double HALF = 0.5;

  private final Structure structure;
  private final Foliage foliage;
  private final WoodMiddle middle;

  Cuts(Structure structure) {
    this.structure = structure;
    foliage = new Foliage(structure);
    middle = new WoodMiddle(structure);
  }

  /** What taking off whole shoots leaves. */
  Aftermath removing(List<Shoot> shoots) {
    double lost =
        shoots.stream()
            .filter(shoot -> shoots.stream().noneMatch(other -> sitsOn(shoot, other)))
            .mapToDouble(shoot -> foliage.beyond(shoot, 0))
            .sum();
    return aftermath(
        shoots.stream().map(this::removed).toList(),
        lost,
        OptionalDouble.empty(),
        structure.main().line().length());
  }

  private boolean sitsOn(Shoot shoot, Shoot other) {
    Shoot at = shoot;
    while (!at.isMain()) {
      at = structure.shoots().get(at.seat().on());
      if (at.number() == other.number()) {
        return true;
      }
    }
    return false;
  }

  /** What cutting a shoot across leaves. */
  Aftermath shortening(Shoot shoot, double at) {
    double whole = foliage.beyond(shoot, 0);
    double lost = foliage.beyond(shoot, at);
    OptionalDouble left = whole > 0 ? OptionalDouble.of(1 - lost / whole) : OptionalDouble.empty();
    AdvisedCut wound = across(shoot, at, 1);
    double trunk = shoot.isMain() ? at : structure.main().line().length();
    return aftermath(List.of(wound), lost, left, trunk);
  }

  private Aftermath aftermath(
      List<AdvisedCut> wounds, double lost, OptionalDouble left, double trunk) {
    return new Aftermath(
        wounds,
        lost,
        structure.rules().mostLost(),
        left,
        new Aftermath.Change<>(
            middle.now(), middle.after(wounds.stream().map(cut -> cut.face().cut()).toList())),
        new Aftermath.Change<>(taper(structure.main().line().length()), taper(trunk)));
  }

  /** Caliper at half the length over that of the base, for a trunk of a length [1]. */
  private double taper(double length) {
    WoodLine line = structure.main().line();
    return line.caliper(HALF * length) / line.caliper(0);
  }

  private AdvisedCut removed(Shoot shoot) {
    Union seat = shoot.seat();
    boolean isRest = shoot.line().pieces().get(0).from() > 0;
    if (isRest) {
      double at = clear(seat);
      return across(shoot, at, shoot.line().caliper(at) / seat.parentCaliper());
    }
    CutFace face = CutFace.ofWhole(skeleton(), shoot.line().pieces().get(0).segment());
    WoodKind wood = structure.rules().wood();
    CutAdvice advice =
        face.across() ? CutAdvice.across(wood, face.width()) : CutAdvice.flush(wood, face.width());
    return new AdvisedCut(face, face.width() / seat.parentCaliper(), advice);
  }

  private AdvisedCut across(Shoot shoot, double at, double share) {
    Spot cut = shoot.line().spot(at);
    CutFace face = CutFace.across(skeleton(), skeleton().indexOf(cut.segment()), cut.along());
    return new AdvisedCut(face, share, CutAdvice.across(structure.rules().wood(), face.width()));
  }

  private Skeleton skeleton() {
    return structure.wood().skeleton();
  }

  /** The rest of a segment is cut where the shoot that goes on there stays whole [m]. */
  private double clear(Union seat) {
    WoodLine parent = structure.shoots().get(seat.on()).line();
    double goesOn = parent.caliper(Math.min(parent.length(), seat.at() + seat.parentCaliper() / 2));
    return goesOn / 2;
  }
}
