// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import boughwright.modeller.design.planted.Stock.Piece;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Tree;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;

/**
 * A tree grown round a hidden best front, as the trade describes one: the trunk moves square to the
 * line of sight and hardly along it, recedes a little low down and leans toward the viewer at the
 * top; wounds are at the back; the root base is widest across the view; thick branches go to the
 * sides and the back, and none points at the viewer low down. The tree stands well as measured, so
 * the hidden front is an azimuth without a tilt. Common practice, no source.
 *
 * <p>From the back the same tree shows its wounds and its back branches end on, and its apex leans
 * away.
 *
 * @param seed the seed it is grown from; the same seed gives the same tree
 * @param tree the tree
 * @param azimuth the hidden front [rad]
 */
public record PlantedFront(long seed, Tree tree, double azimuth) {
  /** The hundred trees of the seeds 1 to 100. */
  public static List<PlantedFront> hundred() {
    return LongStream.rangeClosed(1, 100).mapToObj(PlantedFront::of).toList();
  }

  /** The tree of a seed. */
  public static PlantedFront of(long seed) {
    return new Grower(seed).grow();
  }

  /** Grows one tree; directions are worked out as the viewer at the hidden front sees them. */
  private static final class Grower {
    private final long seed;
    private final Random random;
    private final double azimuth;
    private final double caliper;
    private final double height;
    private final Stock stock = new Stock();
    private final List<Piece> trunk = new ArrayList<>();

    Grower(long seed) {
      this.seed = seed;
      random = new Random(seed * 7919 + 13);
      azimuth = between(0, 2 * Math.PI);
      caliper = between(22e-3, 88e-3);
      height = Math.max(0.16, Math.min(0.88, caliper * between(5.5, 10)));
    }

    PlantedFront grow() {
      growTrunk();
      growRoots();
      growBranches();
      hurt();
      return new PlantedFront(seed, stock.tree("front " + seed), azimuth);
    }

    private double between(double low, double high) {
      return low + random.nextDouble() * (high - low);
    }

    private double noise(double spread) {
      return random.nextGaussian() * spread;
    }

    /** The way seen from the front: to the right, away, up. */
    private Vector3 seen(double right, double away, double up) {
      Direction3 toward = Direction3.ofAzimuth(azimuth);
      Direction3 left = Direction3.ofAzimuth(azimuth + Math.PI / 2);
      return toward.times(-away).plus(left.times(-right)).plus(new Vector3(0, 0, up));
    }

    /** A level way, by its angle from the line to the viewer, plus toward the viewer's left. */
    private Direction3 level(double fromViewer) {
      return Direction3.ofAzimuth(azimuth + fromViewer);
    }

    private void growTrunk() {
      int count = 7 + random.nextInt(4);
      double swing = between(0.12, 0.18) * height * (random.nextBoolean() ? 1 : -1);
      double waves = between(1.1, 1.7);
      double lean = between(0.04, 0.075) * height;
      double tip = between(0.12, 0.2);
      for (int i = 1; i <= count; i++) {
        double s = (double) i / count;
        double right = swing * (1 - 0.6 * s) * Math.sin(2 * Math.PI * waves * s);
        double away = lean * (0.35 * Math.sin(Math.PI * s) - s * s * s);
        Vector3 step =
            seen(right + noise(0.006 * height), away + noise(0.006 * height), s * height);
        Point3 end = Point3.ORIGIN.plus(step);
        double from = caliper * (1 - (1 - tip) * (s - 1.0 / count));
        double to = caliper * (1 - (1 - tip) * s) * between(0.98, 1);
        trunk.add(
            i == 1
                ? stock.base("t1", end, from, to)
                : stock.onward(trunk.get(i - 2), "t" + i, end, to + (from - to) * 0.95, to));
      }
    }

    private void growRoots() {
      int count = 6 + random.nextInt(3);
      double first = between(0, 2 * Math.PI);
      for (int i = 0; i < count; i++) {
        double way = first + 2 * Math.PI * (i + between(-0.2, 0.2)) / count;
        double across = Math.abs(Math.sin(way));
        double thick = caliper * (0.24 + 0.24 * across) * between(0.9, 1.1);
        double reach = caliper * (0.75 + 0.85 * across * across) * between(0.92, 1.08);
        Vector3 step =
            level(way).times(reach).plus(new Vector3(0, 0, -caliper * between(0.2, 0.3)));
        stock.side(trunk.get(0), 0, "r" + (i + 1), Kind.ROOT, step, thick, thick * 0.5);
      }
    }

    private void growBranches() {
      int number = 1;
      int hand = random.nextBoolean() ? 1 : -1;
      for (int i = (int) Math.round(trunk.size() * 0.33) - 1; i < trunk.size() - 1; i++) {
        Piece on = trunk.get(i);
        double s = on.end().z() / height;
        hand = -hand;
        double side = hand * Math.toRadians(between(75, 105));
        branch("b" + number++, on, side, s);
        if (i % 2 == 0 || s > 0.6) {
          double back = Math.PI - hand * Math.toRadians(between(-35, 35));
          branch("b" + number++, on, back, s);
        }
        if (s > 0.75) {
          double near = -hand * Math.toRadians(between(45, 65));
          branch("b" + number++, on, near, s + 0.1);
        }
      }
    }

    private void branch(String id, Piece on, double way, double s) {
      double along = between(0.55, 0.95);
      double trunkThere = on.caliperStart() + along * (on.caliperEnd() - on.caliperStart());
      double thick = Math.max(1.2e-3, trunkThere * between(0.24, 0.36));
      double reach = trunkThere + height * between(0.24, 0.34) * Math.max(0.25, 1.15 - s);
      double rise = Math.toRadians(between(5, 25));
      Piece inner =
          stock.side(on, along, id, Kind.BRANCH, out(way, rise, reach * 0.55), thick, thick * 0.75);
      double bend = Math.toRadians(between(-18, 18));
      Point3 end = inner.end().plus(out(way + bend, rise * between(0.3, 1.3), reach * 0.45));
      Piece outer = stock.onward(inner, id + "o", end, thick * 0.73, thick * 0.4);
      if (s < 0.75) {
        double fork = Math.toRadians(between(35, 55)) * (random.nextBoolean() ? 1 : -1);
        // A twig keeps out of the way of the eye as the branch does.
        double twig = Math.cos(way + fork) > 0.5 ? way - fork : way + fork;
        stock.side(
            outer,
            0.15,
            id + "s",
            Kind.BRANCH,
            out(twig, rise, reach * 0.3),
            thick * 0.4,
            thick * 0.25);
      }
    }

    private Vector3 out(double way, double rise, double length) {
      return level(way)
          .times(Math.cos(rise) * length)
          .plus(new Vector3(0, 0, Math.sin(rise) * length));
    }

    private void hurt() {
      int count = 1 + random.nextInt(3);
      for (int i = 0; i < count; i++) {
        Piece on = trunk.get(1 + random.nextInt(trunk.size() / 2));
        double size = on.caliperEnd() * between(0.35, 0.6);
        stock.wound(on, between(0.2, 0.8), level(Math.PI + Math.toRadians(between(-30, 30))), size);
      }
    }
  }
}
