// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Small trees put together piece by piece, in millimetres. */
final class Trees {
  private final List<Segment> segments = new ArrayList<>();

  /** A place and a caliper [mm]. */
  record At(double x, double y, double z, double caliper) {
    Point3 point() {
      return new Point3(x / 1000, y / 1000, z / 1000);
    }
  }

  /** A trunk through places, t1, t2, ... */
  static Trees trunk(At... places) {
    Trees trees = new Trees();
    for (int n = 1; n < places.length; n++) {
      boolean first = n == 1;
      trees.segments.add(
          new Segment(
              "t" + n,
              first ? Optional.empty() : Optional.of("t" + (n - 1)),
              1,
              Optional.empty(),
              Kind.TRUNK,
              first ? Optional.of(places[0].point()) : Optional.empty(),
              places[n].point(),
              places[n - 1].caliper() / 1000,
              places[n].caliper() / 1000,
              OptionalDouble.empty(),
              Optional.empty(),
              Map.of()));
    }
    return trees;
  }

  /**
   * A branch that starts a fraction along a segment.
   *
   * @param where the segment and the fraction, such as "t2@0.5"
   * @param start its caliper at the union [mm]
   * @param end its tip and the caliper there
   */
  Trees branch(String id, String where, double start, At end) {
    return branch(id, where, start, end, Kind.BRANCH);
  }

  Trees branch(String id, String where, double start, At end, Kind kind) {
    String[] parts = where.split("@");
    segments.add(
        new Segment(
            id,
            Optional.of(parts[0]),
            Double.parseDouble(parts[1]),
            Optional.of(Joint.UNION),
            kind,
            Optional.empty(),
            end.point(),
            start / 1000,
            end.caliper() / 1000,
            OptionalDouble.empty(),
            Optional.empty(),
            Map.of()));
    return this;
  }

  Skeleton skeleton() {
    return new Skeleton(new TreeDraft("test", new TreeWood.OfSpecies("unknown"), segments).build());
  }

  Structure structure(ReviewRules rules) {
    WoodLeft wood = new WoodLeft(skeleton());
    return new Structure(wood, TrunkLine.of(wood, Optional.empty()), Optional.empty(), rules);
  }

  Structure structure() {
    return structure(rules());
  }

  Review review(Optional<FrontPose> front, ReviewRules rules) {
    WoodLeft wood = new WoodLeft(skeleton());
    return Review.of(wood, TrunkLine.of(wood, Optional.empty()), front, rules);
  }

  Review review() {
    return review(Optional.empty(), rules());
  }

  static ReviewRules rules() {
    return ReviewRules.of(TreeStyle.UPRIGHT, WoodKind.BROADLEAF);
  }

  /** A trunk of 400 mm that moves left and right, 60 mm thick at its base and 8 mm at its tip. */
  static Trees moving() {
    return trunk(
        new At(0, 0, 0, 60),
        new At(14, 0, 60, 50),
        new At(-8, 6, 125, 42),
        new At(16, -4, 190, 34),
        new At(-6, 8, 260, 25),
        new At(10, 0, 330, 16),
        new At(0, 4, 400, 8));
  }
}
