// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.modeller.geometry.Vector3;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.SectionLaw;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The sections along a span after one more pose: each was bent as its moment there bent it. What a
 * place remembers follows from the pose alone, whatever mesh asks.
 */
public final class RememberedLine implements WoodLine {
  private final WoodLine before;
  private final RodPose pose;
  private final Optional<RodPose> to;
  private final int span;
  private final Spell spell;
  private final Map<Double, WoodSection> known = new HashMap<>();

  /**
   * For one span.
   *
   * @param before its sections before that pose
   * @param pose the pose it was held in
   * @param span its index in the pose
   * @param spell how long it was held in the pose, and what passed meanwhile
   */
  public RememberedLine(WoodLine before, RodPose pose, int span, Spell spell) {
    this.before = before;
    this.pose = pose;
    to = Optional.empty();
    this.span = span;
    this.spell = spell;
  }

  private RememberedLine(RememberedLine moving, RodPose to) {
    before = moving.before;
    pose = moving.pose;
    span = moving.span;
    spell = moving.spell;
    this.to = Optional.of(to);
  }

  /** The same for a span that had come to another pose by the end of the spell. */
  public RememberedLine moving(RodPose end) {
    return new RememberedLine(this, end);
  }

  @Override
  public WoodSection at(double s) {
    return known.computeIfAbsent(s, this::remember);
  }

  private WoodSection remember(double s) {
    WoodSection section = before.at(s);
    double[] from = strain(section, pose, s);
    WoodSection after = section.after(from[0], from[1], from[2], spell);
    if (to.isEmpty()) {
      return after;
    }
    return section.going(from, strain(after, to.get(), s), spell);
  }

  private double[] strain(WoodSection section, RodPose bent, double s) {
    Vector3 moment = bent.moment(span, s);
    return section.strainUnder(moment.x(), moment.y(), moment.z());
  }

  @Override
  public SectionLaw settledAt(double s) {
    return before.settledAt(s);
  }
}
