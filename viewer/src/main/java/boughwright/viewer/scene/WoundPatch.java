// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Wound;

/** A wound as an oval of bare wood on the bark, with a rim of callus round it. */
final class WoundPatch {
  private static final int SIDES = 32;

  /** How deep under the bark the patch is closed, and from where it faces inward, by its size. */
  private static final double UNDERSIDE = 0.2;

  private static final double DEEP = -0.1;

  /** Within this of vertical a segment has no upper side (tree file, version 1). */
  private static final double UPRIGHT = Math.toRadians(10);

  /** Share of the oval, height over the bark as a share of its size, and whether it is callus. */
  private static final double[][] PROFILE = {
    {0.35, 0.014, 0},
    {0.62, 0.016, 0},
    {0.70, 0.024, 1},
    {0.80, 0.062, 1},
    {0.90, 0.055, 1},
    {1.00, -0.02, 1}
  };

  private final Skeleton skeleton;
  private final Pose pose;
  private final Stand stand;

  WoundPatch(Skeleton skeleton, Pose pose, Stand stand) {
    this.skeleton = skeleton;
    this.pose = pose;
    this.stand = stand;
  }

  /**
   * From the axis of a segment at rest toward the bark at an angle round it, counted as in the tree
   * file: clockwise looking along it, from its upper side, or from the side toward azimuth 0.
   */
  static Vector3 radial(Direction3 way, double round) {
    double lean = Math.min(way.angleTo(Direction3.UP), way.angleTo(Direction3.UP.opposite()));
    Vector3 from = lean <= UPRIGHT ? Direction3.ofAzimuth(0).vector() : Direction3.UP.vector();
    Direction3 zero = from.minus(way.times(from.dot(way.vector()))).direction();
    return Rotation.about(way, round).turn(zero).vector();
  }

  Mesh mesh(Wound wound) {
    MeshBuilder mesh = new MeshBuilder();
    Spread spread = new Spread(wound, mesh);
    double size = spread.size();
    int middle = spread.vertex(0, 0, PROFILE[0][1] * size, Palette.DEADWOOD);
    int inner = -1;
    for (double[] ring : PROFILE) {
      Colour colour = ring[2] == 0 ? Palette.DEADWOOD : Palette.CALLUS;
      int first = -1;
      for (int j = 0; j < SIDES; j++) {
        int v = spread.vertex(ring[0], 2 * Math.PI * j / SIDES, ring[1] * size, colour);
        first = j == 0 ? v : first;
      }
      for (int j = 0; j < SIDES; j++) {
        int next = (j + 1) % SIDES;
        if (inner < 0) {
          mesh.triangle(middle, first + j, first + next);
        } else {
          mesh.triangle(inner + j, first + j, first + next);
          mesh.triangle(inner + j, first + next, inner + next);
        }
      }
      inner = first;
    }
    int under = spread.vertex(0, 0, -UNDERSIDE * size, Palette.CALLUS);
    for (int j = 0; j < SIDES; j++) {
      mesh.triangle(under, inner + (j + 1) % SIDES, inner + j);
    }
    return mesh.build();
  }

  /** Lays the flat oval of a wound round the bark. */
  private final class Spread {
    private final Wound wound;
    private final MeshBuilder mesh;
    private final int segment;
    private final double length;
    private final Vector3 restRadial;
    private final Direction3 restWay;

    Spread(Wound wound, MeshBuilder mesh) {
      this.wound = wound;
      this.mesh = mesh;
      segment = skeleton.indexOf(wound.segment());
      length = skeleton.length(segment);
      Direction3 way = skeleton.direction(segment);
      restRadial = stand.turn().turn(radial(way, wound.round()));
      restWay = stand.turn().turn(way);
    }

    int vertex(double share, double angle, double lift, Colour colour) {
      double uneven = share * (1 + 0.05 * Math.sin(3 * angle + 1) + 0.03 * Math.sin(5 * angle));
      double across = uneven * Math.cos(angle) * wound.width() / 2;
      double up = uneven * Math.sin(angle) * wound.height() / 2;
      double along = Math.min(1, Math.max(0, wound.along() + up / length));
      Axis axis = pose.at(segment, along);
      double radius = Thickness.radius(skeleton.segment(segment), along);
      Vector3 carried = Rotation.between(restWay, axis.direction()).turn(restRadial);
      Vector3 radial = Rotation.about(axis.direction(), across / radius).turn(carried);
      Point3 at = axis.point().plus(radial.times(radius + lift));
      Vector3 outward =
          axis.direction()
              .vector()
              .cross(radial)
              .times(Math.cos(angle))
              .plus(axis.direction().times(Math.sin(angle)));
      Vector3 facing = lift < DEEP * size() ? radial.times(-1) : radial;
      Vector3 normal = facing.plus(outward.times(tilt(share))).direction().vector();
      return mesh.vertex(at, normal, colour, MeshBuilder.Grain.NONE);
    }

    private double size() {
      return Math.min(wound.width(), wound.height());
    }

    private double tilt(double share) {
      if (share < 0.66) {
        return 0;
      }
      return share < 0.82 ? -0.45 : 0.7;
    }
  }
}
