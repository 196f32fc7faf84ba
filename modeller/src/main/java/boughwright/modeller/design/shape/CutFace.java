// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The flat face that a cut leaves on a tree at rest, an ellipse.
 *
 * <p>Wood that goes on beyond the cut is cut square across. A whole branch is cut along the wood it
 * sits on, at the bark: as wide as the branch, and longer by one over the sine of the angle between
 * the two, which is the section of a cylinder by a plane.
 *
 * @param cut the cut as a plan holds it
 * @param on where the face is, on wood that stays
 * @param across whether it is the whole section of its wood
 * @param middle its middle [m, tree frame]
 * @param normal out of the wood
 * @param lengthwise along its height, square to the normal
 * @param width across the grain, the size that decides when it closes [m]
 * @param height along the grain [m]
 */
public record CutFace(
    Spot cut,
    Spot on,
    boolean across,
    Point3 middle,
    Direction3 normal,
    Direction3 lengthwise,
    double width,
    double height) {
  /** Faces of branches that lean along their parent are taken no longer than this [widths]. */
  private static final double LONGEST = 3;

  /** Wood within this of its parent's direction has no side it leaves from [rad]. */
  private static final double IN_LINE = 1e-6;

  public CutFace {
    Objects.requireNonNull(cut, "cut");
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(middle, "middle");
    if (Math.abs(normal.dot(lengthwise)) > 1e-9) {
      throw new IllegalArgumentException("the length of a face lies in it");
    }
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException("a face of " + width + " by " + height);
    }
  }

  /** The faces of all cuts; dead wood has no callus, and leaves none. */
  public static List<CutFace> all(Cutting cutting) {
    Skeleton skeleton = cutting.skeleton();
    List<CutFace> all = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      if (skeleton.segment(i).kind() != Kind.DEADWOOD) {
        if (cutting.isGone(i)) {
          if (isCutItself(cutting, i)) {
            all.add(ofWhole(skeleton, i));
          }
        } else if (cutting.left(i) < 1) {
          all.add(across(skeleton, i, cutting.left(i)));
        }
      }
    }
    return all;
  }

  /** Whether a segment that is gone is cut off what it sits on, not taken with it. */
  private static boolean isCutItself(Cutting cutting, int i) {
    Skeleton skeleton = cutting.skeleton();
    int parent = skeleton.parent(i);
    if (parent == Skeleton.NONE || cutting.isGone(parent)) {
      return false;
    }
    double left = cutting.left(parent);
    return left == 1 || skeleton.segment(i).along() < left;
  }

  /** The face where a segment is cut a fraction along it. */
  public static CutFace across(Skeleton skeleton, int i, double along) {
    Spot cut = new Spot(skeleton.segment(i).id(), along);
    return across(cut, cut, new Section(skeleton, i, along));
  }

  /**
   * The face where a whole segment is taken off its parent.
   *
   * @throws IllegalArgumentException if it has none
   */
  public static CutFace ofWhole(Skeleton skeleton, int i) {
    int parent = skeleton.parent(i);
    if (parent == Skeleton.NONE) {
      throw new IllegalArgumentException("segment " + i + " sits on no other");
    }
    Segment segment = skeleton.segment(i);
    Spot cut = new Spot(segment.id(), 0);
    Spot on = new Spot(skeleton.segment(parent).id(), segment.along());
    Direction3 grain = skeleton.direction(parent);
    double angle = grain.angleTo(skeleton.direction(i));
    if (skeleton.joint(i) == Joint.CONTINUES || Math.sin(angle) < IN_LINE) {
      return across(cut, on, new Section(skeleton, i, 0));
    }
    Direction3 out = aside(skeleton.direction(i), grain).direction();
    double width = skeleton.caliper(i, 0);
    return new CutFace(
        cut,
        on,
        false,
        skeleton
            .point(parent, segment.along())
            .plus(out.times(skeleton.caliper(parent, segment.along()) / 2)),
        out,
        grain,
        width,
        width * Math.min(LONGEST, 1 / Math.sin(angle)));
  }

  /** A place on a segment at which it is cut. */
  private record Section(Skeleton skeleton, int segment, double along) {}

  private static CutFace across(Spot cut, Spot on, Section at) {
    Direction3 axis = at.skeleton.direction(at.segment);
    double caliper = at.skeleton.caliper(at.segment, at.along);
    return new CutFace(
        cut,
        on,
        true,
        at.skeleton.point(at.segment, at.along),
        axis,
        at.skeleton.roundDirection(at.segment, 0),
        caliper,
        caliper);
  }

  /** The part of a direction that is square to another. */
  private static Vector3 aside(Direction3 way, Direction3 from) {
    return way.vector().minus(from.times(way.dot(from)));
  }

  /** Its area [m2]. */
  public double area() {
    return Math.PI / 4 * width * height;
  }
}
