// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Whether a taut line runs through wood. Works on any pose: the wood is a list of tapered limbs, in
 * the frame the line is given in.
 */
public final class LineOfSight {
  /** Steps of the search for the place deepest inside a limb; each leaves 0.618 of the rest. */
  private static final int STEPS = 40;

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private LineOfSight() {}

  /**
   * A tapered limb with round ends.
   *
   * @param segment segment id
   * @param from one end of its axis [m]
   * @param to the other end, apart from the first [m]
   * @param fromRadius radius over bark at the first end, 0 or more [m]
   * @param toRadius radius over bark at the other end, 0 or more [m]
   */
  public record Limb(String segment, Point3 from, Point3 to, double fromRadius, double toRadius) {
    public Limb {
      Objects.requireNonNull(segment, "segment");
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
      if (!(fromRadius >= 0 && toRadius >= 0)) {
        throw new IllegalArgumentException("a limb has radii, not " + fromRadius);
      }
    }
  }

  /**
   * A straight line to be looked along.
   *
   * @param from its pad [m]
   * @param to its anchor [m]
   * @param leftOut ids of segments that cannot be in its way: those its ends are tied to
   * @param clearFrom length at its pad that is not looked at: the pad sits on wood [m]
   * @param clearTo length at its anchor that is not looked at [m]
   */
  public record Sight(
      Point3 from, Point3 to, Set<String> leftOut, double clearFrom, double clearTo) {
    public Sight {
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
      leftOut = Set.copyOf(leftOut);
    }
  }

  /**
   * A limb in the way.
   *
   * @param segment its segment
   * @param part where on the line it is deepest inside, as a part of the line from its pad [1]
   * @param along where on the limb's axis that is, 0 to 1 [1]
   * @param depth how far the line would have to move aside to clear the limb, more than 0 [m]
   * @param away which way: from the limb's axis to the line, of any length; zero if they cross
   */
  public record Block(String segment, double part, double along, double depth, Vector3 away) {}

  /** What the cuts leave of a tree, as measured; parts of branches inside their parent included. */
  public static List<Limb> limbs(Cutting cutting) {
    Skeleton skeleton = cutting.skeleton();
    List<Limb> limbs = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      if (!cutting.isGone(i)) {
        double left = cutting.left(i);
        limbs.add(
            new Limb(
                skeleton.segment(i).id(),
                skeleton.start(i),
                skeleton.point(i, left),
                skeleton.caliper(i, 0) / 2,
                skeleton.caliper(i, left) / 2));
      }
    }
    return limbs;
  }

  /** The limb a line runs deepest through; empty if the line is clear. */
  public static Optional<Block> deepest(List<Limb> limbs, Sight sight) {
    return blocks(limbs, sight).stream().max(Comparator.comparingDouble(Block::depth));
  }

  /** All limbs a line runs through, in the order given. */
  public static List<Block> blocks(List<Limb> limbs, Sight sight) {
    double length = sight.from().distance(sight.to());
    double first = sight.clearFrom() / length;
    double last = 1 - sight.clearTo() / length;
    List<Block> blocks = new ArrayList<>();
    if (!(first < last)) {
      return blocks;
    }
    for (Limb limb : limbs) {
      if (!sight.leftOut().contains(limb.segment()) && mayMeet(limb, sight, length)) {
        Block block = deepestIn(limb, sight, first, last);
        if (block.depth() > 0) {
          blocks.add(block);
        }
      }
    }
    return blocks;
  }

  /** False where the balls round line and limb are apart. */
  private static boolean mayMeet(Limb limb, Sight sight, double length) {
    double apart =
        sight.from().toward(sight.to(), 0.5).distance(limb.from().toward(limb.to(), 0.5));
    double thick = Math.max(limb.fromRadius(), limb.toRadius());
    return apart <= (length + limb.from().distance(limb.to())) / 2 + thick;
  }

  /** Golden section: a limb is convex, so the depth along a line has one peak. */
  private static Block deepestIn(Limb limb, Sight sight, double first, double last) {
    double low = first;
    double high = last;
    for (int k = 0; k < STEPS; k++) {
      double a = high - GOLDEN * (high - low);
      double b = low + GOLDEN * (high - low);
      if (at(limb, sight, a).depth() >= at(limb, sight, b).depth()) {
        high = b;
      } else {
        low = a;
      }
    }
    return at(limb, sight, (low + high) / 2);
  }

  private static Block at(Limb limb, Sight sight, double part) {
    Point3 point = sight.from().toward(sight.to(), part);
    Vector3 axis = limb.to().minus(limb.from());
    double squared = axis.dot(axis);
    double foot = squared > 0 ? point.minus(limb.from()).dot(axis) / squared : 0;
    double along = Math.min(1, Math.max(0, foot));
    Vector3 away = point.minus(limb.from().toward(limb.to(), along));
    double radius = limb.fromRadius() + along * (limb.toRadius() - limb.fromRadius());
    return new Block(limb.segment(), part, along, radius - away.norm(), away);
  }
}
