// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.design.shape.LeafPads;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Leaves;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.PadShape;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Skeleton;
import java.util.List;
import java.util.function.Predicate;

/** What a tree wears in leaf, as uneven ellipsoids that go with the branches. */
final class Leafage {
  private static final int RINGS = 14;
  private static final int SIDES = 24;

  private final Skeleton skeleton;
  private final Stand stand;
  private final LeafPads worn;
  private final Colour colour;

  /** What the wood that the cuts leave wears. */
  Leafage(Cutting kept, Stand stand) {
    skeleton = kept.skeleton();
    this.stand = stand;
    worn = LeafPads.of(new WoodLeft(kept));
    boolean evergreen =
        skeleton.tree().foliage().leaves().filter(Leaves.EVERGREEN::equals).isPresent();
    colour = evergreen ? Palette.NEEDLES : Palette.LEAVES;
  }

  /**
   * The pads of a pose.
   *
   * @param pose where the branches are
   * @param seen whether the pads of a segment are shown
   */
  Body body(Pose pose, Predicate<String> seen) {
    List<Mesh> meshes =
        worn.pads().stream()
            .filter(pad -> seen.test(pad.segment()))
            .map(pad -> mesh(shape(pad, pose)))
            .toList();
    return new Body(worn.guessed() ? Body.Role.GUESSED_FOLIAGE : Body.Role.FOLIAGE, meshes);
  }

  /** The pad where its branch is in a pose: it turns with the wood. */
  private PadShape shape(Pad pad, Pose pose) {
    int segment = skeleton.indexOf(pad.segment());
    Direction3 rest = skeleton.direction(segment);
    Axis axis = pose.at(segment, pad.along());
    Rotation carry = Rotation.between(stand.turn().turn(rest), axis.direction());
    Direction3 upper = carry.turn(stand.turn().turn(RoundAngle.zero(rest)));
    Direction3 way = axis.direction();
    return new PadShape(
        axis.point().plus(upper.times(pad.raised())),
        way,
        upper,
        way.vector().cross(upper.vector()).direction(),
        pad.length() / 2,
        pad.width() / 2,
        pad.thickness() / 2);
  }

  private Mesh mesh(PadShape shape) {
    MeshBuilder mesh = new MeshBuilder();
    int first = vertex(mesh, shape, 0, 0);
    int before = -1;
    for (int ring = 1; ring < RINGS; ring++) {
      int start = -1;
      for (int side = 0; side < SIDES; side++) {
        int v = vertex(mesh, shape, Math.PI * ring / RINGS, 2 * Math.PI * side / SIDES);
        start = side == 0 ? v : start;
      }
      for (int side = 0; before < 0 && side < SIDES; side++) {
        mesh.triangle(first, start + (side + 1) % SIDES, start + side);
      }
      if (before >= 0) {
        mesh.band(before, start, SIDES);
      }
      before = start;
    }
    int last = vertex(mesh, shape, Math.PI, 0);
    for (int side = 0; side < SIDES; side++) {
      mesh.triangle(last, before + side, before + (side + 1) % SIDES);
    }
    return mesh.build();
  }

  /**
   * A place on a pad.
   *
   * @param down from the inner end of its length, 0, to the outer, half a turn [rad]
   * @param round round its length, from its upper side [rad]
   */
  private int vertex(MeshBuilder mesh, PadShape shape, double down, double round) {
    double uneven =
        1
            - 0.05
                * Math.sin(down)
                * (1 + Math.sin(5 * round + 3 * down) * Math.cos(2 * round + 7 * down));
    double length = -Math.cos(down) * uneven;
    double thick = Math.sin(down) * Math.cos(round) * uneven;
    double width = Math.sin(down) * Math.sin(round) * uneven;
    Vector3 away =
        sum(
            shape,
            length * shape.halfLength(),
            thick * shape.halfThickness(),
            width * shape.halfWidth());
    Point3 at = shape.centre().plus(away);
    Vector3 normal =
        sum(
            shape,
            length / shape.halfLength(),
            thick / shape.halfThickness(),
            width / shape.halfWidth());
    MeshBuilder.Grain grain =
        new MeshBuilder.Grain(
            length * shape.halfLength(),
            thick * shape.halfThickness(),
            width * shape.halfWidth(),
            1);
    return mesh.vertex(at, normal.direction().vector(), colour, grain);
  }

  private static Vector3 sum(PadShape shape, double length, double thick, double width) {
    return shape
        .lengthway()
        .times(length)
        .plus(shape.thickway().times(thick))
        .plus(shape.widthway().times(width));
  }
}
