// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.tree.Foliage;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Setting;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A tree turned about the vertical and made larger or smaller; without wounds and container. */
final class MovedTree {
  private MovedTree() {}

  static Tree of(Tree tree, double size, double turn) {
    List<Segment> segments =
        tree.segments().stream()
            .map(
                old ->
                    new Segment(
                        old.id(),
                        old.parent(),
                        old.along(),
                        old.joins(),
                        old.kind(),
                        old.start().map(start -> moved(start, size, turn)),
                        moved(old.end(), size, turn),
                        size * old.caliperStart(),
                        size * old.caliperEnd(),
                        times(old.bark(), size),
                        old.live(),
                        old.extras()))
            .toList();
    return new TreeDraft(tree)
        .measuredOn(Optional.empty())
        .bark(times(tree.bark(), size))
        .segments(segments)
        .wounds(List.of())
        .pullTests(List.of())
        .setting(Setting.UNSAID)
        .foliage(Foliage.UNSAID)
        .build();
  }

  private static OptionalDouble times(OptionalDouble value, double size) {
    return value.isPresent() ? OptionalDouble.of(size * value.getAsDouble()) : value;
  }

  private static Point3 moved(Point3 point, double size, double turn) {
    return Point3.ORIGIN.plus(
        Rotation.about(Direction3.UP, turn).turn(point.minus(Point3.ORIGIN)).times(size));
  }
}
