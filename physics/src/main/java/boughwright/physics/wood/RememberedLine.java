// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.modeller.geometry.Vector3;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.SectionLaw;
import java.util.HashMap;
import java.util.Map;

/**
 * The sections along a span after one more pose: each was bent as its moment there bent it. What a
 * place remembers follows from the pose alone, whatever mesh asks.
 */
public final class RememberedLine implements WoodLine {
  private final WoodLine before;
  private final RodPose pose;
  private final int span;
  private final double seconds;
  private final Map<Double, WoodSection> known = new HashMap<>();

  /**
   * For one span.
   *
   * @param before its sections before that pose
   * @param pose the pose it was held in
   * @param span its index in the pose
   * @param seconds how long it was held in the pose [s]
   */
  public RememberedLine(WoodLine before, RodPose pose, int span, double seconds) {
    this.before = before;
    this.pose = pose;
    this.span = span;
    this.seconds = seconds;
  }

  @Override
  public WoodSection at(double s) {
    return known.computeIfAbsent(s, this::remember);
  }

  private WoodSection remember(double s) {
    WoodSection section = before.at(s);
    Vector3 moment = pose.moment(span, s);
    double[] strain = section.strainUnder(moment.x(), moment.y(), moment.z());
    return section.after(strain[0], strain[1], seconds);
  }

  @Override
  public SectionLaw settledAt(double s) {
    return before.settledAt(s);
  }
}
