// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Shoots that touch, or nearly, at an angle. */
final class Crossings {
  /**
   * The way through the wood over the distance. Two straight shoots of one fork reach 3.7 where
   * they are 30 degrees apart (the cotangent of half the angle) and less where they are further
   * apart.
   */
  private static final double ROUNDABOUT = 4.5;

  private final Structure structure;

  Crossings(Structure structure) {
    this.structure = structure;
  }

  /** A piece of a shoot in a box with room for the gap. */
  private record Item(Shoot shoot, int piece, Point3 low, Point3 high) {
    boolean isBeside(Item other) {
      return low.y() <= other.high.y()
          && other.low.y() <= high.y()
          && low.z() <= other.high.z()
          && other.low.z() <= high.z();
    }
  }

  private record Pair(int one, int other) {}

  /** Where two shoots are nearest: distances along them [m] and the gap over the mean caliper. */
  private record Meeting(Shoot one, double at, Shoot other, double otherAt, double gap) {}

  /** One for each pair of shoots, at their nearest. */
  List<Found> find() {
    List<Item> items = items();
    Map<Pair, Meeting> nearest = new LinkedHashMap<>();
    for (int i = 0; i < items.size(); i++) {
      Item one = items.get(i);
      for (int j = i + 1; j < items.size() && items.get(j).low().x() <= one.high().x(); j++) {
        if (one.isBeside(items.get(j))) {
          meeting(one, items.get(j)).ifPresent(m -> nearest.merge(pair(m), m, this::nearer));
        }
      }
    }
    return nearest.values().stream()
        .sorted(Comparator.comparingDouble(Meeting::gap))
        .map(this::found)
        .toList();
  }

  private static Pair pair(Meeting m) {
    return new Pair(m.one().number(), m.other().number());
  }

  private Meeting nearer(Meeting a, Meeting b) {
    return a.gap() <= b.gap() ? a : b;
  }

  private List<Item> items() {
    List<Item> items = new ArrayList<>();
    for (Shoot shoot : structure.shoots()) {
      if (shoot.counts() && (shoot.isMain() || structure.isJudged(shoot))) {
        for (int n = 0; n < shoot.line().pieces().size(); n++) {
          items.add(item(shoot, n));
        }
      }
    }
    items.sort(Comparator.comparingDouble(item -> item.low().x()));
    return items;
  }

  private Item item(Shoot shoot, int n) {
    WoodLine line = shoot.line();
    Point3 a = line.points().get(n);
    Point3 b = line.points().get(n + 1);
    double thick = Math.max(line.caliperOn(n, line.start(n)), line.caliperOn(n, line.start(n + 1)));
    double room = thick * (1 + structure.limit(Limit.CROSSING_GAP)) / 2;
    Point3 low = new Point3(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z()));
    Point3 high =
        new Point3(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()), Math.max(a.z(), b.z()));
    Vector3 out = new Vector3(room, room, room);
    return new Item(shoot, n, low.plus(out.times(-1)), high.plus(out));
  }

  private Optional<Meeting> meeting(Item a, Item b) {
    if (a.shoot().number() == b.shoot().number()) {
      return Optional.empty();
    }
    Item one = a.shoot().number() < b.shoot().number() ? a : b;
    Item other = one == a ? b : a;
    Nearest near = nearest(one, other);
    WoodLine line = one.shoot().line();
    WoodLine otherLine = other.shoot().line();
    double at = line.start(one.piece()) + near.first();
    double otherAt = otherLine.start(other.piece()) + near.second();
    double mean =
        (line.caliperOn(one.piece(), at) + otherLine.caliperOn(other.piece(), otherAt)) / 2;
    double gap = Math.max(0, near.distance() - mean) / mean;
    boolean crosses =
        gap <= structure.limit(Limit.CROSSING_GAP)
            && angle(one, other) >= structure.limit(Limit.CROSSING_ANGLE)
            && way(one.shoot(), at, other.shoot(), otherAt) >= ROUNDABOUT * near.distance();
    Meeting meeting = new Meeting(one.shoot(), at, other.shoot(), otherAt, gap);
    return crosses && !isUnion(meeting) ? Optional.of(meeting) : Optional.empty();
  }

  /** Whether both are met where a shoot still sits in, or just leaves, the wood it sits on. */
  private static boolean isUnion(Meeting m) {
    boolean sisters = !m.one().isMain() && m.one().seat().on() == m.other().seat().on();
    boolean child = m.other().seat().on() == m.one().number();
    return isInWood(m.other(), m.otherAt()) && (child || sisters && isInWood(m.one(), m.at()));
  }

  private static boolean isInWood(Shoot shoot, double at) {
    return at <= shoot.seat().parentCaliper() + shoot.seat().caliper();
  }

  private static Nearest nearest(Item one, Item other) {
    List<Point3> a = one.shoot().line().points();
    List<Point3> b = other.shoot().line().points();
    return Nearest.of(
        new Nearest.Stick(a.get(one.piece()), a.get(one.piece() + 1)),
        new Nearest.Stick(b.get(other.piece()), b.get(other.piece() + 1)));
  }

  /** Between the two as lines, up to a right angle [rad]. */
  private static double angle(Item one, Item other) {
    double angle = direction(one).angleTo(direction(other));
    return Math.min(angle, Math.PI - angle);
  }

  private static Direction3 direction(Item item) {
    List<Point3> points = item.shoot().line().points();
    return points.get(item.piece() + 1).minus(points.get(item.piece())).direction();
  }

  /** From one place to another through the wood [m]. */
  private double way(Shoot one, double at, Shoot other, double otherAt) {
    Shoot a = one;
    Shoot b = other;
    double onA = at;
    double onB = otherAt;
    double sum = 0;
    while (a.number() != b.number()) {
      if (a.number() > b.number()) {
        sum += onA;
        onA = a.seat().at();
        a = structure.shoots().get(a.seat().on());
      } else {
        sum += onB;
        onB = b.seat().at();
        b = structure.shoots().get(b.seat().on());
      }
    }
    return sum + Math.abs(onA - onB);
  }

  /** The thinner one may go, and never the trunk line. */
  private Found found(Meeting m) {
    boolean one =
        !m.one().isMain() && m.one().line().caliper(m.at()) < m.other().line().caliper(m.otherAt());
    Shoot thinner = one ? m.one() : m.other();
    Shoot thicker = one ? m.other() : m.one();
    double at = one ? m.at() : m.otherAt();
    double theirs = one ? m.otherAt() : m.at();
    String id = thinner.line().spot(at).segment();
    return new Found(
        FaultKind.CROSSING,
        List.of(id, thicker.line().spot(theirs).segment()),
        Where.on(thinner.line(), at),
        List.of(structure.measured(Limit.CROSSING_GAP, m.gap())),
        new Found.Subject.Place(thinner, at));
  }
}
