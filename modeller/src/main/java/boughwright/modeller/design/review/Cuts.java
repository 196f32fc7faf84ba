// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.RoundAngle;
import java.util.List;
import java.util.OptionalDouble;

/** Works out what cuts leave. */
final class Cuts {
  /** Wounds of branches that lean along their parent are taken no longer than this [1]. */
  private static final double LONGEST = 3;

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
    double caliper = shoot.line().caliper(at);
    CutAdvice advice = CutAdvice.across(structure.rules().wood(), caliper);
    Spot cut = shoot.line().spot(at);
    double height = caliper / Math.sin(advice.angle());
    WoundLeft wound = new WoundLeft(cut, cut, 0, true, caliper, height, 1, advice);
    double trunk = shoot.isMain() ? at : structure.main().line().length();
    return aftermath(List.of(wound), lost, left, trunk);
  }

  private Aftermath aftermath(
      List<WoundLeft> wounds, double lost, OptionalDouble left, double trunk) {
    return new Aftermath(
        wounds,
        lost,
        structure.rules().mostLost(),
        left,
        new Aftermath.Change<>(
            middle.now(), middle.after(wounds.stream().map(WoundLeft::cut).toList())),
        new Aftermath.Change<>(taper(structure.main().line().length()), taper(trunk)));
  }

  /** Caliper at half the length over that of the base, for a trunk of a length [1]. */
  private double taper(double length) {
    WoodLine line = structure.main().line();
    return line.caliper(HALF * length) / line.caliper(0);
  }

  private WoundLeft removed(Shoot shoot) {
    Union seat = shoot.seat();
    WoodLine parent = structure.shoots().get(seat.on()).line();
    WoodLine.Piece first = shoot.line().pieces().get(0);
    double caliper = seat.caliper();
    double height = Math.min(LONGEST, 1 / Math.sin(seat.angle())) * caliper;
    Spot on = parent.spot(seat.at());
    double round = seat.side().norm() > 1e-6 ? RoundAngle.of(seat.parent(), seat.side()) : 0;
    boolean isRest = first.from() > 0;
    Spot cut = isRest ? shoot.line().spot(clear(seat)) : new Spot(shoot.line().id(), 0);
    double width = isRest ? shoot.line().caliper(clear(seat)) : caliper;
    CutAdvice advice =
        isRest
            ? CutAdvice.across(structure.rules().wood(), width)
            : CutAdvice.flush(structure.rules().wood(), caliper);
    return new WoundLeft(
        cut,
        on,
        round,
        isRest,
        width,
        isRest ? width : height,
        width / seat.parentCaliper(),
        advice);
  }

  /** The rest of a segment is cut where the shoot that goes on there stays whole [m]. */
  private double clear(Union seat) {
    WoodLine parent = structure.shoots().get(seat.on()).line();
    double goesOn = parent.caliper(Math.min(parent.length(), seat.at() + seat.parentCaliper() / 2));
    return goesOn / 2;
  }
}
