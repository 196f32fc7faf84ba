// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Proposal;
import java.util.OptionalDouble;

/** A plan without negative zeros, which would read back as another plan. */
final class PlainPlan {
  private PlainPlan() {}

  static Plan of(Plan from) {
    return new PlanDraft(from)
        .frontAzimuth(of(from.frontAzimuth()))
        .planting(from.planting().map(PlainPlan::of))
        .proposals(from.proposals().stream().map(PlainPlan::of).toList())
        .build();
  }

  static Planting of(Planting angle) {
    return new Planting(angle.tilt() + 0.0, angle.towardAzimuth() + 0.0, angle.extras());
  }

  private static Proposal of(Proposal from) {
    return from.withLines(PlainPlan::of)
        .withHandBends(from.handBends().stream().map(PlainPlan::of).toList());
  }

  private static GuyLine of(GuyLine line) {
    Anchor anchor =
        line.anchor() instanceof Anchor.Fixed fixed
            ? new Anchor.Fixed(SegmentDraft.plain(fixed.point()))
            : line.anchor();
    return new GuyLine(
        line.id(),
        line.at(),
        of(line.padRound()),
        anchor,
        line.hold(),
        line.tackle(),
        line.extras());
  }

  private static HandBend of(HandBend hand) {
    Direction3 way = hand.direction();
    return new HandBend(
        hand.id(),
        hand.at(),
        new Direction3(way.x() + 0.0, way.y() + 0.0, way.z() + 0.0),
        hand.move(),
        hand.extras());
  }

  private static OptionalDouble of(OptionalDouble value) {
    return value.isPresent() ? OptionalDouble.of(value.getAsDouble() + 0.0) : value;
  }
}
