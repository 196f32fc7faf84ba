// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Map;
import java.util.Objects;

/**
 * A pad of foliage: an ellipsoid on a branch that stands for its leaves or needles. Its length runs
 * along the branch, its width lies level, its thickness is square to both ({@link PadShape}).
 *
 * @param id name within the tree
 * @param segment the segment it is on
 * @param along where along that segment its middle is, 0 to 1 [1]
 * @param length whole size along the branch [m]
 * @param width whole size across it, level [m]
 * @param thickness whole size square to both [m]
 * @param raised how far its middle lies from the axis, to the branch's upper side; below it, less
 *     than 0 [m]
 * @param extras fields of the file that this version does not know
 */
public record Pad(
    String id,
    String segment,
    double along,
    double length,
    double width,
    double thickness,
    double raised,
    Map<String, Object> extras) {
  public Pad {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(segment, "segment");
    if (!(along >= 0 && along <= 1)) {
      throw new IllegalArgumentException("along is " + along + ", 0 to 1 is expected");
    }
    if (!(length > 0 && width > 0 && thickness > 0)
        || Double.isInfinite(length + width + thickness)) {
      throw new IllegalArgumentException(
          "a pad has a size, not " + length + " by " + width + " by " + thickness);
    }
    if (!Double.isFinite(raised)) {
      throw new IllegalArgumentException("raised is " + raised);
    }
    extras = Extras.copyOf(extras);
  }

  /** The same pad on another place of the tree. */
  public Pad at(String otherSegment, double otherAlong) {
    return new Pad(id, otherSegment, otherAlong, length, width, thickness, raised, extras);
  }

  /** The same pad by another name. */
  public Pad called(String other) {
    return new Pad(other, segment, along, length, width, thickness, raised, extras);
  }
}
