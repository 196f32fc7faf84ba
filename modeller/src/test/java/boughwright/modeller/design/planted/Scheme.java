// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Which way the branches of a tree go and how its trunk bends, drawn until all of it is sound but
 * for what is planted. Angles are azimuths [rad].
 */
final class Scheme {
  /** Where the trunk bends, as parts of its length; the last is the tip. */
  private static final double[] PLACES = {
    0.09, 0.17, 0.26, 0.34, 0.42, 0.50, 0.57, 0.64, 0.71, 0.77, 0.83, 0.88, 0.93, 1
  };

  static final int LOW = 0;
  static final int FIRST = 3;
  static final int SECOND = 5;
  static final int BETWEEN = 6;
  static final int THIRD = 7;
  static final int LEADER = 8;
  static final int FOURTH = 9;
  static final int TIP = 13;

  private static final double FREE_VIEW_LOW = Math.toRadians(42);
  private static final double FREE_VIEW_HIGH = Math.toRadians(30);
  private static final int TRIES = 40;
  private static final double STEEPEST_LEAN = 0.8;

  /** A limb of the trunk, the node it leaves, which way it goes, and what is wrong with it. */
  record Shoot(String id, int node, double azimuth, Optional<PlantedKind> fault) {
    boolean is(PlantedKind kind) {
      return fault.equals(Optional.of(kind));
    }
  }

  private final Random random;
  private final Set<PlantedKind> kinds;
  final double front;
  final double[] places = PLACES.clone();
  final double[] outside = new double[TIP];
  final double[] turn = new double[TIP];
  final List<Shoot> shoots = new ArrayList<>();
  final List<Direction3> directions = new ArrayList<>();

  /** The node of the branch that a parallel or crossing branch is close to. */
  final int partner;

  /** On which side of its partner a crossing branch starts. */
  final int side;

  private Scheme(Random random, Set<PlantedKind> kinds) {
    this.random = random;
    this.kinds = kinds;
    front = anyWay();
    side = random.nextBoolean() ? 1 : -1;
    boolean thirdIsFaulty =
        kinds.contains(PlantedKind.INSIDE_OF_CURVE) || kinds.contains(PlantedKind.TOO_THICK);
    partner = thirdIsFaulty || random.nextBoolean() ? SECOND : THIRD;
    for (int i = 0; i < TIP; i++) {
      places[i] += between(-0.006, 0.006);
    }
  }

  /** Draws until a scheme is sound but for what is planted; empty if this draw is not. */
  static Optional<Scheme> draw(Random random, Set<PlantedKind> kinds) {
    Scheme scheme = new Scheme(random, kinds);
    scheme.branch();
    if (!scheme.branchesAreApart()) {
      return Optional.empty();
    }
    scheme.bend();
    return scheme.bendsSuit() && scheme.runTrunk() ? Optional.of(scheme) : Optional.empty();
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private double degrees(double low, double high) {
    return Math.toRadians(between(low, high));
  }

  private double anyWay() {
    return between(0, 2 * Math.PI);
  }

  boolean has(PlantedKind kind) {
    return kinds.contains(kind);
  }

  /** The shoot of an id. */
  Shoot shoot(String id) {
    return shoots.stream().filter(shoot -> shoot.id().equals(id)).findFirst().orElseThrow();
  }

  private void add(String id, int node, double azimuth, PlantedKind fault) {
    shoots.add(new Shoot(id, node, azimuth, Optional.ofNullable(fault)));
  }

  private PlantedKind when(PlantedKind kind, boolean here) {
    return here && has(kind) ? kind : null;
  }

  private void branch() {
    int inside = has(PlantedKind.STRAIGHT) ? FOURTH : THIRD;
    PlantedKind atViewer = when(PlantedKind.AT_VIEWER, true);
    PlantedKind ofFirst = when(PlantedKind.LONG_INTERNODE, true);
    double first = atViewer == null ? free(FIRST) : front + degrees(-6, 6);
    add("b0", FIRST, first, atViewer == null ? ofFirst : atViewer);
    double second = free(SECOND);
    PlantedKind bar = when(PlantedKind.BAR_BRANCHES, true);
    PlantedKind whorl = when(PlantedKind.WHORL, true);
    add("b1", SECOND, second, bar == null ? whorl : bar);
    if (bar != null) {
      add("b1x", SECOND, second + Math.PI + degrees(-6, 6), bar);
    }
    if (whorl != null) {
      add("b1x", SECOND, second + degrees(113, 127), whorl);
      add("b1y", SECOND, second - degrees(113, 127), whorl);
    }
    PlantedKind ofThird = when(PlantedKind.INSIDE_OF_CURVE, inside == THIRD);
    add("b2", THIRD, free(THIRD), ofThird == null ? when(PlantedKind.TOO_THICK, true) : ofThird);
    if (has(PlantedKind.COMPETING_LEADERS)) {
      add("l1", LEADER, free(LEADER), PlantedKind.COMPETING_LEADERS);
    } else {
      add("b3", FOURTH, free(FOURTH), when(PlantedKind.INSIDE_OF_CURVE, inside == FOURTH));
    }
    for (int i = FOURTH + 1; i < TIP; i++) {
      add("b" + (i - 6), i, free(i), null);
    }
    if (has(PlantedKind.TOO_LOW)) {
      add("low", LOW, free(LOW), PlantedKind.TOO_LOW);
    }
    if (has(PlantedKind.PARALLEL)) {
      add("px", BETWEEN, of(partner).azimuth() + degrees(-4, 4), PlantedKind.PARALLEL);
    }
    if (has(PlantedKind.CROSSING)) {
      add("cx", BETWEEN, of(partner).azimuth() + side * degrees(47, 53), PlantedKind.CROSSING);
    }
  }

  /** The first shoot at a node. */
  Shoot of(int node) {
    return shoots.stream().filter(shoot -> shoot.node() == node).findFirst().orElseThrow();
  }

  static double apart(double a, double b) {
    return Math.abs(Math.IEEEremainder(a - b, 2 * Math.PI));
  }

  /** A way that suits the branches there are already, or any way if none is found soon. */
  private double free(int node) {
    double way = anyWay();
    for (int i = 0; i < TRIES; i++) {
      Shoot shoot = new Shoot("", node, way, Optional.empty());
      if (seesPast(shoot) && shoots.stream().allMatch(other -> areApart(shoot, other))) {
        return way;
      }
      way = anyWay();
    }
    return way;
  }

  private boolean seesPast(Shoot shoot) {
    double free = shoot.node() < FOURTH ? FREE_VIEW_LOW : FREE_VIEW_HIGH;
    return apart(shoot.azimuth(), front) >= free;
  }

  private boolean branchesAreApart() {
    for (Shoot shoot : shoots) {
      if (!shoot.is(PlantedKind.AT_VIEWER) && !seesPast(shoot)) {
        return false;
      }
      for (Shoot other : shoots) {
        if (other != shoot && !isPair(shoot, other) && !areApart(shoot, other)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean isPair(Shoot a, Shoot b) {
    return a.node() == b.node()
        || isBetween(a) && b.node() == partner
        || isBetween(b) && a.node() == partner;
  }

  private static boolean isBetween(Shoot shoot) {
    return shoot.node() == BETWEEN;
  }

  private boolean areApart(Shoot a, Shoot b) {
    double height = Math.abs(places[a.node()] - places[b.node()]);
    double round = apart(a.azimuth(), b.azimuth());
    double leastRound = height < 0.22 ? 40 : height < 0.3 ? 25 : 0;
    double mostRound = height < 0.11 ? 150 : 180;
    return round >= Math.toRadians(leastRound) && round <= Math.toRadians(mostRound);
  }

  private void bend() {
    double low = has(PlantedKind.TOO_LOW) ? shoot("low").azimuth() : anyWay();
    double fourth = has(PlantedKind.COMPETING_LEADERS) ? of(10).azimuth() : of(FOURTH).azimuth();
    double leader = has(PlantedKind.COMPETING_LEADERS) ? of(LEADER).azimuth() : fourth;
    boolean twin = has(PlantedKind.PARALLEL) || has(PlantedKind.CROSSING);
    double third = of(THIRD).azimuth();
    double[] ways = {
      low,
      low,
      of(FIRST).azimuth(),
      of(FIRST).azimuth(),
      of(SECOND).azimuth(),
      of(SECOND).azimuth(),
      twin ? of(BETWEEN).azimuth() : third,
      third,
      leader,
      fourth,
      of(10).azimuth(),
      of(11).azimuth(),
      of(12).azimuth()
    };
    for (int i = 0; i < TIP; i++) {
      outside[i] = ways[i] + degrees(-8, 8);
      turn[i] = i > FOURTH ? degrees(18, 22) : degrees(14, 18);
    }
    for (Shoot shoot : shoots) {
      if (shoot.is(PlantedKind.INSIDE_OF_CURVE)) {
        boolean helped = !twin || shoot.node() != THIRD;
        outside[shoot.node()] = shoot.azimuth() + Math.PI;
        turn[shoot.node()] = helped ? degrees(20, 24) : degrees(28, 32);
        if (helped) {
          outside[shoot.node() - 1] = shoot.azimuth() + Math.PI;
        }
      }
    }
    if (has(PlantedKind.BAR_BRANCHES) || has(PlantedKind.WHORL)) {
      turn[SECOND] = degrees(0, 1);
      outside[SECOND - 1] = outside[BETWEEN] + Math.PI;
      turn[SECOND - 1] = turn[BETWEEN];
    }
    if (has(PlantedKind.STRAIGHT)) {
      for (int i = SECOND - 1; i <= THIRD; i++) {
        turn[i] = degrees(0, 1);
      }
    }
  }

  /** How much the trunk round a node bows toward an azimuth [rad]. */
  private double bow(int node, double azimuth) {
    double sum = 0;
    for (int i = Math.max(0, node - 1); i <= Math.min(TIP - 1, node + 1); i++) {
      sum += (i == node ? 1 : 0.5) * turn[i] * Math.cos(outside[i] - azimuth);
    }
    return sum;
  }

  private boolean bendsSuit() {
    return shoots.stream().allMatch(this::suits);
  }

  private boolean suits(Shoot shoot) {
    double bow = bow(shoot.node(), shoot.azimuth());
    if (shoot.is(PlantedKind.INSIDE_OF_CURVE)) {
      return bow < -0.3;
    }
    return bow > (turn[shoot.node()] > 0.05 ? 0.06 : -0.03);
  }

  private boolean runTrunk() {
    List<Direction3> first = run(Direction3.UP);
    Vector3 mean = Vector3.ZERO;
    for (int i = 0; i <= TIP; i++) {
      mean = mean.plus(first.get(i).times(places[i] - (i == 0 ? 0 : places[i - 1])));
    }
    directions.addAll(run(new Vector3(-mean.x(), -mean.y(), mean.z()).direction()));
    return directions.stream().allMatch(way -> way.z() > STEEPEST_LEAN);
  }

  private List<Direction3> run(Direction3 from) {
    List<Direction3> out = new ArrayList<>();
    out.add(from);
    for (int i = 0; i < TIP; i++) {
      out.add(turned(out.get(i), Direction3.ofAzimuth(outside[i]).opposite(), turn[i]));
    }
    return out;
  }

  /** A direction turned by an angle toward another. */
  static Direction3 turned(Direction3 from, Direction3 toward, double angle) {
    Vector3 square = toward.vector().minus(from.times(toward.dot(from)));
    return from.times(Math.cos(angle)).plus(square.direction().times(Math.sin(angle))).direction();
  }
}
