// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.LineOfSight;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.TreeStand;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Targets that nothing reaches, seen before anything is tried. */
final class Hopeless {
  /** A target nearer than this is there already [m] (a choice). */
  private static final double THERE = 5e-4;

  /** A limb is not pulled quite straight: a point it may come to, as a part of its length [1]. */
  private static final double SAFELY = 0.95;

  /**
   * A way that cuts the wood deeper than this part of its radius goes through it [1] (a choice).
   */
  private static final double THROUGH = 0.3;

  /** Turn about the trunk by which a way round it is looked for [rad]. */
  private static final double TURN = Math.toRadians(5);

  private final TreeStand stand;
  private final Skeleton skeleton;
  private final LimbPath path;
  private final Target target;

  Hopeless(TreeStand stand, LimbPath path, Target target) {
    this.stand = stand;
    skeleton = stand.skeleton();
    this.path = path;
    this.target = target;
  }

  /** Why the place cannot be moved at all; asked before anything is solved. */
  static Optional<Unreachable> held(TreeStand stand, Spot spot) {
    int i = stand.skeleton().indexOf(spot.segment());
    boolean root = stand.skeleton().segment(i).kind() == Kind.ROOT;
    if (!root && !stand.isHeld(spot)) {
      return Optional.empty();
    }
    return Optional.of(
        new Unreachable(
            "held-fast",
            String.format(
                Locale.ROOT,
                root
                    ? "\"%s\" is a root and stays where it is"
                    : "\"%s\" is held fast there and stays where it is",
                spot.segment()),
            "Name a place further out on a branch or the trunk"));
  }

  /**
   * Why the target cannot be reached, if that is plain.
   *
   * @param startMiss how far it is before anything is tied [m]
   */
  Optional<Unreachable> plain(double startMiss) {
    if (startMiss < THERE) {
      return Optional.of(
          new Unreachable(
              "there-already",
              String.format(
                  Locale.ROOT,
                  "\"%s\" is there already, to %.1f mm",
                  target.spot().segment(),
                  1000 * startMiss),
              "Nothing needs to be tied; give a place to bring it to"));
    }
    return target instanceof Target.Point point ? of(point.point()) : Optional.empty();
  }

  private Optional<Unreachable> of(Point3 wanted) {
    double length = path.lengthTo(target.spot());
    double away = wanted.distance(path.start());
    if (away > length + THERE) {
      Point3 near = path.start().toward(wanted, SAFELY * length / away);
      return Optional.of(
          new Unreachable(
              "too-far",
              String.format(
                  Locale.ROOT,
                  "the point is %.0f mm from where the limb starts to bend, and along the wood it is"
                      + " only %.0f mm to that place of \"%s\"",
                  1000 * away,
                  1000 * length,
                  target.spot().segment()),
              "Give a nearer point, such as " + millimetres(near)));
    }
    for (int i = 0; i < skeleton.size(); i++) {
      if (isFixed(i) && skeleton.encloses(i, wanted, stand.cutting().left(i))) {
        return Optional.of(inside(skeleton.segment(i).id(), wanted));
      }
    }
    return through(wanted);
  }

  private boolean isFixed(int i) {
    return !stand.cutting().isGone(i) && !path.segments().contains(i);
  }

  private Unreachable inside(String id, Point3 wanted) {
    return new Unreachable(
        "in-wood",
        "the point is inside the wood of \"" + id + "\"",
        around(wanted)
            .map(free -> "Give a point outside it, such as " + millimetres(free))
            .orElse("Give a point outside it"));
  }

  private Optional<Unreachable> through(Point3 wanted) {
    return inTheWay(wanted)
        .map(
            block ->
                new Unreachable(
                    "through-wood",
                    "the point lies on the far side of \"" + block.segment() + "\"",
                    around(wanted)
                        .map(free -> "Give a point on this side, such as " + millimetres(free))
                        .orElse("Give a point on the side of the branch")));
  }

  /** The wood that the straight way from where the limb starts to a point goes right through. */
  private Optional<LineOfSight.Block> inTheWay(Point3 wanted) {
    int first = path.segments().get(0);
    int carrier = skeleton.parent(first);
    double clear = skeleton.caliper(first, 0) / 2;
    if (carrier == Skeleton.NONE || !(wanted.distance(path.start()) > clear)) {
      return Optional.empty();
    }
    List<LineOfSight.Limb> fixed =
        LineOfSight.limbs(stand.cutting()).stream()
            .filter(limb -> isThick(limb.segment()))
            .toList();
    return LineOfSight.deepest(
            fixed, new LineOfSight.Sight(path.start(), wanted, Set.of(), clear, 0))
        .filter(block -> block.depth() > THROUGH * radius(block));
  }

  /** The limb of the trunk base, which is not pushed aside. */
  private boolean isThick(String id) {
    int i = skeleton.indexOf(id);
    return isFixed(i) && skeleton.segment(i).kind() == Kind.TRUNK;
  }

  private double radius(LineOfSight.Block block) {
    return skeleton.caliper(skeleton.indexOf(block.segment()), block.along()) / 2;
  }

  /** A free point, by turning the point about the wood that carries the limb toward the limb. */
  private Optional<Point3> around(Point3 wanted) {
    int first = path.segments().get(0);
    int carrier = skeleton.parent(first);
    if (carrier == Skeleton.NONE) {
      return Optional.empty();
    }
    Point3 pivot = skeleton.start(carrier);
    Vector3 from = wanted.minus(pivot);
    Vector3 limb = path.start().minus(pivot);
    Vector3 axis = skeleton.direction(carrier).vector();
    double side = from.cross(limb).dot(axis) >= 0 ? 1 : -1;
    for (double angle = TURN; angle <= Math.PI; angle += TURN) {
      Rotation turn = Rotation.about(skeleton.direction(carrier), side * angle);
      Point3 there = pivot.plus(turn.turn(from));
      boolean near = there.distance(path.start()) <= SAFELY * path.lengthTo(target.spot());
      if (near && isFree(there) && inTheWay(there).isEmpty()) {
        return Optional.of(there);
      }
    }
    return Optional.empty();
  }

  private boolean isFree(Point3 point) {
    for (int i = 0; i < skeleton.size(); i++) {
      if (isFixed(i) && skeleton.encloses(i, point, stand.cutting().left(i))) {
        return false;
      }
    }
    return true;
  }

  /** A point as an option takes it. */
  static String millimetres(Point3 point) {
    return String.format(
        Locale.ROOT, "%.0f,%.0f,%.0f", 1000 * point.x(), 1000 * point.y(), 1000 * point.z());
  }
}
