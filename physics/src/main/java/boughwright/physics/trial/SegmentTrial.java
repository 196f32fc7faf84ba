// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Skeleton;
import java.util.List;

/**
 * What a trial does to one segment.
 *
 * @param segment segment id
 * @param start start of the axis in the bent pose [m, tree frame]
 * @param end end of the axis in the bent pose [m, tree frame]
 * @param startDirection direction of the axis at its start
 * @param endDirection direction of the axis at its end
 * @param bendingStrain largest bending strain along the segment [1]
 * @param moment largest bending moment [N m]
 * @param torsion largest torsional moment, without sign [N m]
 * @param axial largest force along the axis, positive in tension [N]
 * @param samples places from start to end, at least the two ends, in order
 */
public record SegmentTrial(
    String segment,
    Point3 start,
    Point3 end,
    Direction3 startDirection,
    Direction3 endDirection,
    double bendingStrain,
    double moment,
    double torsion,
    double axial,
    List<PathSample> samples) {
  public SegmentTrial {
    samples = List.copyOf(samples);
  }

  /** How far the end of what is left of the segment lies from its place as measured [m]. */
  public double endMoved(Skeleton skeleton) {
    PathSample last = samples.get(samples.size() - 1);
    return last.point().distance(skeleton.point(skeleton.indexOf(segment), last.along()));
  }
}
