// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.Objects;

/**
 * Where a new segment starts, and what it most likely is.
 *
 * @param parent index of the segment it starts on
 * @param along where on it, from 0 to 1 [1]
 * @param joins how it joins
 */
public record Seat(int parent, double along, Joint joins) {
  public Seat {
    Objects.requireNonNull(joins, "joins");
    if (!(along >= 0 && along <= 1)) {
      throw new IllegalArgumentException("along is " + along);
    }
  }

  /** The seat at a place: the shoot goes on where a segment ends and nothing continues it yet. */
  public static Seat at(Skeleton skeleton, Spot spot) {
    int parent = skeleton.indexOf(spot.segment());
    boolean free =
        skeleton.children(parent).stream()
            .noneMatch(child -> skeleton.joint(child) == Joint.CONTINUES);
    return new Seat(
        parent, spot.along(), spot.along() == 1 && free ? Joint.CONTINUES : Joint.UNION);
  }

  /** The name of the segment it starts on. */
  public String id(Skeleton skeleton) {
    return skeleton.segment(parent).id();
  }

  /** Where it starts [m, tree frame]. */
  public Point3 point(Skeleton skeleton) {
    return skeleton.point(parent, along);
  }

  /** Caliper of the parent there [m]. */
  public double caliper(Skeleton skeleton) {
    return skeleton.caliper(parent, along);
  }

  /** What the new segment most likely is: its parent's kind, or a branch or root of it. */
  public Kind kind(Skeleton skeleton, double elevation) {
    Kind below = skeleton.segment(parent).kind();
    if (joins == Joint.CONTINUES) {
      return below;
    }
    boolean foot = skeleton.parent(parent) == Skeleton.NONE && along < 0.2;
    if (below == Kind.TRUNK && foot && elevation < 0) {
      return Kind.ROOT;
    }
    return below == Kind.TRUNK ? Kind.BRANCH : below;
  }
}
