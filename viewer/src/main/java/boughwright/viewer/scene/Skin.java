// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns a limb in a pose into the stations of its skin. */
final class Skin {
  private static final double FOOT_DEPTH = 0.22;

  private final Skeleton skeleton;
  private final Detail detail;

  /**
   * How finely the skin is drawn.
   *
   * @param sides corners of a ring
   * @param most most stations on one segment
   */
  record Detail(int sides, int most) {
    /** For a tree that is being turned or bent. */
    static Detail moving(int count) {
      if (count <= 100) {
        return new Detail(14, 10);
      }
      return count <= 600 ? new Detail(8, 5) : new Detail(6, 3);
    }

    /** For a tree on the screen that stands still. */
    static Detail still(int count) {
      return count <= 100
          ? new Detail(28, 32)
          : (count <= 600 ? new Detail(16, 9) : new Detail(8, 6));
    }

    /** Fine for a tree measured by hand, coarser for thousands of segments. */
    static Detail forSegments(int count) {
      if (count <= 400) {
        return new Detail(32, 48);
      }
      return count <= 3000 ? new Detail(16, 12) : new Detail(8, 4);
    }
  }

  /**
   * A stretch of a limb.
   *
   * @param fromSegment number of the first segment within the limb
   * @param fromAlong where on it the stretch starts
   * @param toSegment number of the last segment within the limb
   * @param toAlong where on it the stretch ends
   */
  record Stretch(int fromSegment, double fromAlong, int toSegment, double toAlong) {
    boolean isEmpty() {
      return toSegment < fromSegment || (toSegment == fromSegment && toAlong <= fromAlong);
    }
  }

  Skin(Skeleton skeleton, Detail detail) {
    this.skeleton = skeleton;
    this.detail = detail;
  }

  List<Station> stations(Limb limb, Stretch stretch, Pose pose) {
    Thickness thickness = new Thickness(skeleton, limb);
    Optional<Collar> collar =
        skeleton.parent(limb.first()) == Skeleton.NONE
            ? Optional.empty()
            : Optional.of(Collar.of(skeleton, limb.first()));
    List<Station> stations = new ArrayList<>();
    if (collar.isEmpty() && stretch.fromSegment() == 0 && stretch.fromAlong() == 0) {
      stations.add(foot(limb, pose));
    }
    double before = 0;
    for (int k = 0; k <= stretch.toSegment(); k++) {
      int i = limb.segments().get(k);
      double length = skeleton.length(i);
      if (k >= stretch.fromSegment()) {
        double from = k == stretch.fromSegment() ? stretch.fromAlong() : 0;
        double to = k == stretch.toSegment() ? stretch.toAlong() : 1;
        int steps = steps(i, (to - from) * length);
        for (int n = k == stretch.fromSegment() ? 0 : 1; n <= steps; n++) {
          double u = n == steps ? to : from + (to - from) * n / steps;
          double radius = thickness.radius(k, u);
          Station plain = station(pose.at(i, u), radius, before + u * length, i);
          stations.add(collar.map(c -> c.at(plain)).orElse(plain));
        }
      }
      before += length;
    }
    return stations;
  }

  /** The trunk goes on a little under the soil, so that its base shows no edge. */
  private Station foot(Limb limb, Pose pose) {
    Axis base = pose.at(limb.first(), 0);
    double radius = Thickness.radius(skeleton.segment(limb.first()), 0);
    double depth = FOOT_DEPTH * radius;
    Axis foot =
        new Axis(
            base.point().plus(base.direction().times(-depth)),
            base.direction(),
            0,
            base.tensionSide());
    Colour bark = bark(skeleton.segment(limb.first()).kind());
    return new Station(
        foot.point(), foot.direction(), 0.9 * radius, 0, Vector3.ZERO, bark, 1, -depth);
  }

  private int steps(int segment, double length) {
    double radius = Thickness.radius(skeleton.segment(segment), 0.5);
    return (int) Math.min(detail.most(), Math.max(3, Math.ceil(length / (0.4 * radius))));
  }

  private Station station(Axis axis, double radius, double rest, int segment) {
    Colour bark = bark(skeleton.segment(segment).kind());
    Vector3 side = axis.strain() == 0 ? Vector3.ZERO : axis.tensionSide();
    return new Station(axis.point(), axis.direction(), radius, axis.strain(), side, bark, 1, rest);
  }

  private static Colour bark(Kind kind) {
    return switch (kind) {
      case ROOT -> Palette.ROOT_BARK;
      case DEADWOOD -> Palette.DEADWOOD;
      default -> Palette.BARK;
    };
  }
}
