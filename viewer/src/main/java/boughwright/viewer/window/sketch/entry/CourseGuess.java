// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.OptionalDouble;

/**
 * Where a segment most likely points, to begin with until the person types what is measured. Common
 * practice, no source.
 *
 * @param azimuth clockwise seen from above, 0 toward the viewer [rad]
 * @param elevation above level [rad]
 */
public record CourseGuess(double azimuth, double elevation) {
  private static final double FULL = 2 * Math.PI;

  /** A first branch is most often seen at one side, so it is measured there first. */
  private static final double FIRST = Math.toRadians(270);

  /** Branches one above the other stand about this far round from each other. */
  private static final double ROUND = Math.toRadians(140);

  /** Roots share the way round the trunk. */
  private static final double ROOT_ROUND = Math.toRadians(90);

  /** A branch on a branch leaves it at about this angle to one side, the next to the other. */
  private static final double FORK = Math.toRadians(45);

  private static final double BRANCH_UP = Math.toRadians(20);
  private static final double ROOT_DOWN = Math.toRadians(-15);

  /** Above this a segment counts as upright, and its azimuth as chance [rad]. */
  private static final double UPRIGHT = Math.toRadians(60);

  /** A guess for a segment of a kind at a seat: a shoot goes on as it went. */
  public static CourseGuess of(Skeleton skeleton, Seat seat, Kind kind) {
    int parent = seat.parent();
    Polar below = Polar.between(skeleton.start(parent), skeleton.end(parent));
    if (seat.joins() == Joint.CONTINUES) {
      return legible(below.azimuth(), below.elevation());
    }
    OptionalDouble last = lastAzimuth(skeleton, kind);
    if (kind == Kind.ROOT) {
      return legible(last.isPresent() ? last.getAsDouble() + ROOT_ROUND : 0, ROOT_DOWN);
    }
    if (below.elevation() > UPRIGHT) {
      return legible(last.isPresent() ? last.getAsDouble() + ROUND : FIRST, BRANCH_UP);
    }
    boolean even = unions(skeleton, parent) % 2 == 0;
    return legible(below.azimuth() + (even ? FORK : -FORK), below.elevation());
  }

  /** Where the last segment of a kind points that joins the trunk, in the order of the file. */
  private static OptionalDouble lastAzimuth(Skeleton skeleton, Kind kind) {
    OptionalDouble last = OptionalDouble.empty();
    for (int i = 0; i < skeleton.size(); i++) {
      int on = skeleton.parent(i);
      if (on != Skeleton.NONE
          && skeleton.joint(i) == Joint.UNION
          && skeleton.segment(i).kind() == kind
          && skeleton.segment(on).kind() == Kind.TRUNK) {
        last = OptionalDouble.of(Polar.between(skeleton.start(i), skeleton.end(i)).azimuth());
      }
    }
    return last;
  }

  private static long unions(Skeleton skeleton, int parent) {
    return skeleton.children(parent).stream()
        .filter(child -> skeleton.joint(child) == Joint.UNION)
        .count();
  }

  /** To the tenth of a degree, which no protractor reads. */
  private static CourseGuess legible(double azimuth, double elevation) {
    double turned = azimuth - FULL * Math.floor(azimuth / FULL);
    return new CourseGuess(rounded(turned), rounded(elevation));
  }

  private static double rounded(double angle) {
    return Math.toRadians(Math.round(10 * Math.toDegrees(angle)) / 10.0);
  }
}
