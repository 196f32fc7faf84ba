// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import boughwright.modeller.design.planted.Scheme.Shoot;
import boughwright.modeller.design.planted.Stock.Piece;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.tree.Kind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/** Grows one tree that is sound but for what is planted in it; see {@link PlantedFaults}. */
final class FaultyTree {

  private static final int MOST_DRAWS = 200_000;

  /** Share of its start caliper that a trunk has at the tip. */
  private static final double TRUNK_TIP = 0.1;

  private static final double LIMB_TIP = 0.45;

  private final long seed;
  private final Set<PlantedKind> kinds;
  private final Random random;
  private double caliper;
  private double length;
  private Scheme scheme;
  private Stock stock;
  private List<Piece> trunk;
  private List<PlantedFault> faults;

  FaultyTree(long seed, Set<PlantedKind> kinds) {
    this.seed = seed;
    this.kinds = kinds;
    random = new Random(seed * 104_729 + 7);
  }

  PlantedFaults grow() {
    for (int i = 0; i < MOST_DRAWS; i++) {
      Optional<Scheme> drawn = Scheme.draw(random, kinds);
      if (drawn.isPresent() && grows(drawn.get())) {
        return result();
      }
    }
    throw new IllegalStateException("no tree of seed " + seed + " with " + kinds);
  }

  private PlantedFaults result() {
    Plan plan = new PlanDraft("a").frontAzimuth(OptionalDouble.of(scheme.front)).build();
    Document document = new Document(stock.tree("faults " + seed), List.of(plan), Map.of());
    return new PlantedFaults(seed, document, faults);
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private void planted(PlantedKind kind, Piece... pieces) {
    faults.add(new PlantedFault(kind, List.of(pieces).stream().map(Piece::id).toList()));
  }

  private boolean grows(Scheme drawn) {
    scheme = drawn;
    stock = new Stock();
    trunk = new ArrayList<>();
    faults = new ArrayList<>();
    caliper = between(32e-3, 88e-3);
    length = caliper * between(6.5, 8.5);
    growTrunk();
    growRoots();
    Set<String> mayTouch = new HashSet<>();
    for (Shoot shoot : scheme.shoots) {
      if (shoot.is(PlantedKind.COMPETING_LEADERS)) {
        growLeader(shoot);
      } else if (!shoot.is(PlantedKind.CROSSING) && !shoot.is(PlantedKind.PARALLEL)) {
        growBranch(shoot);
      }
    }
    String partner = scheme.of(scheme.partner).id();
    if (scheme.has(PlantedKind.CROSSING)) {
      growCrossing(scheme.shoot("cx"), partner);
      mayTouch.addAll(List.of("cx", partner));
    }
    if (scheme.has(PlantedKind.PARALLEL)) {
      growParallel(partner);
      mayTouch.addAll(List.of("px", partner));
    }
    plantTogether(PlantedKind.BAR_BRANCHES, "b1", "b1x");
    plantTogether(PlantedKind.WHORL, "b1", "b1x", "b1y");
    return Clearance.isKept(stock, mayTouch);
  }

  private void plantTogether(PlantedKind kind, String... ids) {
    if (scheme.has(kind)) {
      planted(kind, List.of(ids).stream().map(stock::piece).toArray(Piece[]::new));
    }
  }

  private double thick(double place) {
    return caliper * (1 - (1 - TRUNK_TIP) * place);
  }

  private void growTrunk() {
    int count = Scheme.TIP + 1;
    double[] from = new double[count];
    double[] to = new double[count];
    for (int i = 0; i < count; i++) {
      from[i] = thick(i == 0 ? 0 : scheme.places[i - 1]);
      to[i] = thick(scheme.places[i]);
    }
    int swollen = scheme.has(PlantedKind.REVERSE_TAPER) ? (random.nextBoolean() ? 2 : 6) : -1;
    if (swollen > 0) {
      from[swollen] = to[swollen - 1] * between(1.16, 1.24);
      to[swollen] = from[swollen] * between(0.97, 0.99);
    }
    Point3 at = Point3.ORIGIN;
    for (int i = 0; i < count; i++) {
      double part = scheme.places[i] - (i == 0 ? 0 : scheme.places[i - 1]);
      at = at.plus(scheme.directions.get(i).times(part * length));
      trunk.add(
          i == 0
              ? stock.base("t1", at, from[i], to[i])
              : stock.onward(trunk.get(i - 1), "t" + (i + 1), at, from[i], to[i]));
    }
    if (swollen > 0) {
      planted(PlantedKind.REVERSE_TAPER, trunk.get(swollen), trunk.get(swollen - 1));
    }
    if (scheme.has(PlantedKind.STRAIGHT)) {
      planted(
          PlantedKind.STRAIGHT,
          trunk.subList(Scheme.FIRST + 1, Scheme.THIRD + 2).toArray(Piece[]::new));
    }
  }

  private void growRoots() {
    int count = 6 + random.nextInt(3);
    double first = between(0, 2 * Math.PI);
    for (int i = 0; i < count; i++) {
      double way = first + 2 * Math.PI * (i + between(-0.15, 0.15)) / count;
      double thick = caliper * between(0.3, 0.4);
      Vector3 step =
          Direction3.ofAzimuth(way)
              .times(caliper * between(0.95, 1.2))
              .plus(new Vector3(0, 0, -caliper * 0.25));
      stock.side(trunk.get(0), 0, "r" + (i + 1), Kind.ROOT, step, thick, thick * 0.5);
    }
  }

  private void growBranch(Shoot shoot) {
    Piece on = trunk.get(shoot.node());
    double usual = on.caliperEnd() * between(0.28, 0.34);
    double thick = usual;
    if (shoot.is(PlantedKind.TOO_THICK)) {
      thick = thick(scheme.places[shoot.node()]) * between(0.74, 0.82);
    } else if (shoot.is(PlantedKind.AT_VIEWER)) {
      thick = on.caliperEnd() * between(0.4, 0.43);
    } else if (shoot.is(PlantedKind.TOO_LOW)) {
      thick = on.caliperEnd() * between(0.2, 0.24);
      usual = thick * 1.3;
    }
    boolean crossed = scheme.has(PlantedKind.CROSSING) && shoot.node() == scheme.partner;
    Course course = new Course(shoot.azimuth(), Math.toRadians(between(10, 22)));
    if (shoot.is(PlantedKind.LONG_INTERNODE)) {
      course.bare(usual, 4).budding(usual, 2);
    } else if (shoot.node() > Scheme.FOURTH) {
      course.budding(usual, 2);
      course.buds.set(1, false);
    } else {
      course.budding(usual, 3);
    }
    if (crossed) {
      course.makeRoom(usual);
    }
    List<Piece> pieces = course.grow(on, shoot.id(), thick, usual);
    boolean single =
        shoot.is(PlantedKind.TOO_THICK)
            || shoot.is(PlantedKind.AT_VIEWER)
            || shoot.is(PlantedKind.TOO_LOW)
            || shoot.is(PlantedKind.INSIDE_OF_CURVE);
    if (single) {
      planted(shoot.fault().orElseThrow(), pieces.get(0));
    } else if (shoot.is(PlantedKind.LONG_INTERNODE)) {
      planted(PlantedKind.LONG_INTERNODE, pieces.subList(0, 4).toArray(Piece[]::new));
    }
  }

  /** The way of a branch: pieces that turn from side to side, with a bud at some of their ends. */
  private final class Course {
    private final double azimuth;
    private final double rise;
    private final double sway = Math.toRadians(between(8.5, 10));
    private int hand = random.nextBoolean() ? 1 : -1;
    private final List<Double> lengths = new ArrayList<>();
    private final List<Boolean> buds = new ArrayList<>();

    Course(double azimuth, double rise) {
      this.azimuth = azimuth;
      this.rise = rise;
    }

    Course bare(double thick, int count) {
      return more(thick * 3.3, count, false);
    }

    Course budding(double thick, int count) {
      more(thick * between(2.6, 2.9), count, true);
      buds.set(buds.size() - 1, false);
      return this;
    }

    private Course more(double each, int count, boolean bud) {
      for (int i = 0; i < count; i++) {
        lengths.add(each);
        buds.add(bud);
      }
      if (bud && lengths.size() > count) {
        buds.set(lengths.size() - count - 1, true);
      }
      return this;
    }

    /** Lets another branch cross the second piece between the side shoots. */
    void makeRoom(double thick) {
      lengths.set(0, thick * 2);
      lengths.set(1, thick * 3.7);
      buds.set(1, false);
    }

    private Direction3 way(int i) {
      return Direction3.ofAzimuth(azimuth + hand * (i % 2 == 0 ? sway : -sway), rise);
    }

    List<Piece> grow(Piece on, String id, double thick, double usual) {
      double tip = usual * LIMB_TIP;
      int count = lengths.size();
      List<Piece> out = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        double from = thick + (tip - thick) * i / count;
        double to = thick + (tip - thick) * (i + 1) / count;
        double inTrunk = i == 0 ? on.caliperEnd() / 2 : 0;
        Vector3 step = way(i).times(lengths.get(i) + inTrunk);
        Piece piece =
            i == 0
                ? stock.side(on, 1, id, Kind.BRANCH, step, from, to)
                : stock.onward(out.get(i - 1), id + i, out.get(i - 1).end().plus(step), from, to);
        out.add(piece);
      }
      for (int i = 0; i < count; i++) {
        if (buds.get(i)) {
          twig(out.get(i), way(i + 1), Math.min(usual, thick) * (1 - 0.55 * (i + 1) / count));
        }
      }
      return out;
    }
  }

  /** A side shoot at the end of a piece, on the outside of the bend there. */
  private void twig(Piece on, Direction3 goesOn, double thick) {
    Direction3 outside = on.direction().vector().minus(goesOn.vector()).direction();
    Direction3 way = Scheme.turned(goesOn, outside, Math.toRadians(between(48, 58)));
    double own = thick * between(0.34, 0.38);
    Vector3 step = way.times(own * between(3.6, 4.2) + thick / 2);
    stock.side(on, 1, on.id() + "s", Kind.BRANCH, step, own, own * 0.6);
  }

  /** A second leader that climbs beside the first to its height. */
  private void growLeader(Shoot shoot) {
    Piece on = trunk.get(shoot.node());
    double from = thick(scheme.places[shoot.node()]) * between(0.86, 0.92);
    double tip = caliper * TRUNK_TIP;
    double top = trunk.get(Scheme.TIP).end().z() * between(0.96, 0.99);
    double[] rises = {45, 68, 70, 72};
    double[] turns = {0, 55, -50, 55};
    int hand = random.nextBoolean() ? 1 : -1;
    double sum = 0;
    for (double rise : rises) {
      sum += Math.sin(Math.toRadians(rise));
    }
    double each = (top - on.end().z()) / sum;
    List<Direction3> ways = new ArrayList<>();
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < rises.length; i++) {
      ways.add(
          Direction3.ofAzimuth(
              shoot.azimuth() + hand * Math.toRadians(turns[i]), Math.toRadians(rises[i])));
      double start = from + (tip - from) * i / rises.length;
      double end = from + (tip - from) * (i + 1) / rises.length;
      Vector3 step = ways.get(i).times(each);
      pieces.add(
          i == 0
              ? stock.side(on, 1, shoot.id(), Kind.TRUNK, step, start, end)
              : stock.onward(
                  pieces.get(i - 1),
                  shoot.id() + i,
                  pieces.get(i - 1).end().plus(step),
                  start,
                  end));
    }
    for (int i = 0; i + 1 < rises.length; i++) {
      twig(pieces.get(i), ways.get(i + 1), pieces.get(i).caliperEnd() * 0.9);
    }
    planted(PlantedKind.COMPETING_LEADERS, pieces.get(0), trunk.get(shoot.node() + 1));
  }

  /** The same branch again, a little above or below, with its side shoots on the other side. */
  private void growParallel(String partner) {
    Piece on = trunk.get(Scheme.BETWEEN);
    Piece like = stock.piece(partner);
    double scale = between(0.92, 1.02);
    List<Piece> own = new ArrayList<>();
    List<Piece> theirs =
        stock.pieces().stream().filter(piece -> piece.limb().equals(partner)).toList();
    for (Piece piece : theirs) {
      Vector3 step = piece.end().minus(piece.start()).times(scale);
      double from = piece.caliperStart() * scale;
      double to = piece.caliperEnd() * scale;
      own.add(
          piece.equals(like)
              ? stock.side(on, 1, "px", Kind.BRANCH, step, from, to)
              : stock.onward(
                  own.get(own.size() - 1),
                  "px" + own.size(),
                  own.get(own.size() - 1).end().plus(step),
                  from,
                  to));
    }
    for (int i = 0; i + 1 < own.size(); i++) {
      Piece twig = stock.piece(theirs.get(i).id() + "s");
      if (twig != null) {
        Vector3 step = twig.end().minus(twig.start());
        Direction3 ahead = own.get(i + 1).direction();
        Vector3 mirrored = ahead.times(2 * step.dot(ahead.vector())).minus(step);
        double from = twig.caliperStart();
        stock.side(own.get(i), 1, own.get(i).id() + "s", Kind.BRANCH, mirrored, from, from * 0.6);
      }
    }
    List<Piece> all = new ArrayList<>(own);
    all.addAll(theirs);
    planted(PlantedKind.PARALLEL, all.toArray(Piece[]::new));
  }

  /** A branch that starts beside its partner, bends across it, and touches it. */
  private void growCrossing(Shoot shoot, String partner) {
    Piece on = trunk.get(Scheme.BETWEEN);
    Piece crossed = stock.piece(partner + "1");
    double thick = on.caliperEnd() * between(0.28, 0.32);
    Point3 touch = crossed.point(between(0.55, 0.65));
    Vector3 way = touch.minus(on.end());
    Vector3 level = new Vector3(way.x(), way.y(), 0);
    Vector3 aside = Direction3.UP.vector().cross(level).times(-scheme.side);
    double gap = (thick * 0.7 + crossed.caliperStart()) / 2 * between(0.3, 0.7);
    double rise = touch.z() + (on.end().z() > touch.z() ? gap : -gap) - on.end().z();
    double[][] plan = {{0.375, 0.45, 0.4}, {0.775, 0.52, 0.8}, {1, 0.28, 1}, {1, -0.38, 1}};
    List<Piece> pieces = new ArrayList<>();
    for (double[] at : plan) {
      int i = pieces.size();
      Point3 end =
          on.end()
              .plus(level.times(at[0]))
              .plus(aside.times(at[1]))
              .plus(new Vector3(0, 0, rise * at[2]));
      double from = thick * (1 - 0.14 * i);
      double to = thick * (1 - 0.14 * (i + 1));
      pieces.add(
          i == 0
              ? stock.side(on, 1, shoot.id(), Kind.BRANCH, end.minus(on.end()), from, to)
              : stock.onward(pieces.get(i - 1), shoot.id() + i, end, from, to));
    }
    twig(pieces.get(0), pieces.get(1).direction(), thick * 0.85);
    twig(pieces.get(1), pieces.get(2).direction(), thick * 0.7);
    planted(PlantedKind.CROSSING, pieces.get(3), crossed, pieces.get(0), stock.piece(partner));
  }
}
