// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import java.util.ArrayList;
import java.util.List;

/**
 * The middle of a coiled wire, strand by strand: it lies on the bark, and turns round the axis by
 * tan(angle) / (half the caliper and half the gauge) for each length along the axis, so by one turn
 * in pi (caliper + gauge) / tan(angle). It starts with close turns that anchor it.
 *
 * <p>The wire lies on the outside where the limb is bent hardest, as is common practice (no
 * source).
 */
final class CoilCurve {
  /** Close turns at the start, common practice (no source) [1]. */
  static final double ANCHOR_TURNS = 1.5;

  /** Of the coil's length, at most this is taken by the anchoring turns [1]. */
  private static final double ANCHOR_SHARE = 0.3;

  /** Distance from turn to turn over the width of the strands, where they lie close [1]. */
  private static final double CLOSE = 1.06;

  /** Places looked at for the hardest bend. */
  private static final int BEND_PLACES = 64;

  /** Less strain than this is no bend [1]. */
  private static final double UNBENT = 1e-5;

  private final BarkPath path;
  private final Coil coil;
  private final List<Knot> knots = new ArrayList<>();
  private final double start;

  /**
   * A place of the wire's way round the limb.
   *
   * @param s length along the axis from the start [m]
   * @param turned angle round the axis since the start, without sign [rad]
   * @param bark the axis and the bark there
   * @param across square to the axis, carried along without twist
   */
  private record Knot(double s, double turned, Station bark, Vector3 across) {}

  /**
   * A place on the middle of a strand.
   *
   * @param wire where it is [m, scene frame]
   * @param bark the axis and the bark beside it
   * @param turned angle round the axis since the start, without sign [rad]
   */
  record Bead(Point3 wire, Station bark, double turned) {}

  /**
   * @param stepsPerTurn places on each turn, 4 or more
   */
  CoilCurve(BarkPath path, Coil coil, int stepsPerTurn) {
    this.path = path;
    this.coil = coil;
    double s = 0;
    double turned = 0;
    Station bark = path.at(0);
    Vector3 across = bark.direction().anySquare().vector();
    knots.add(new Knot(s, turned, bark, across));
    double step = 2 * Math.PI / stepsPerTurn;
    while (s < path.length() * (1 - 1e-9)) {
      double rate = rate(s, bark.radius());
      double to = next(s, step / rate);
      double half = rate((s + to) / 2, path.at((s + to) / 2).radius());
      Station after = path.at(to);
      across = Rotation.between(bark.direction(), after.direction()).turn(across);
      turned += half * (to - s);
      s = to;
      bark = after;
      knots.add(new Knot(s, turned, bark, across));
    }
    start = onTheOutside();
  }

  /** The end of a step; the anchoring turns end on one. */
  private double next(double s, double step) {
    double to = Math.min(path.length(), s + step);
    double anchored = anchored();
    return s < anchored && to > anchored ? anchored : to;
  }

  /** Length along the axis that one strand takes up [m]. */
  private double width() {
    return coil.gauge() / Math.sin(coil.angleToAxis());
  }

  /** Length along the axis of the anchoring turns [m]. */
  double anchored() {
    double close = CLOSE * coil.strands() * coil.gauge();
    return Math.min(ANCHOR_TURNS * close, ANCHOR_SHARE * path.length());
  }

  /** Turn round the axis for each length along it [rad/m]. */
  private double rate(double s, double radius) {
    double closest = 2 * Math.PI / (CLOSE * coil.strands() * coil.gauge());
    double open = Math.tan(coil.angleToAxis()) / (radius + coil.gauge() / 2);
    return s < anchored() ? closest : Math.min(closest, open);
  }

  /** The angle to start at so that the wire crosses the outside of the bend where it is hardest. */
  private double onTheOutside() {
    double anchored = anchored();
    Knot hardest = knots.get(0);
    double most = UNBENT;
    int step = Math.max(1, knots.size() / BEND_PLACES);
    for (int n = 0; n < knots.size(); n += step) {
      Knot knot = knots.get(n);
      if (knot.s() >= anchored && knot.bark().strain() > most) {
        most = knot.bark().strain();
        hardest = knot;
      }
    }
    if (most <= UNBENT) {
      return 0;
    }
    Vector3 side = hardest.bark().tensionSide();
    Vector3 quarter = hardest.bark().direction().vector().cross(hardest.across());
    return Math.atan2(side.dot(quarter), side.dot(hardest.across())) - sign() * hardest.turned();
  }

  private int sign() {
    return coil.hand() == Hand.RIGHT ? 1 : -1;
  }

  /** Turns of one strand in all, the anchoring ones too [1]. */
  double turns() {
    return knots.get(knots.size() - 1).turned() / (2 * Math.PI);
  }

  /**
   * The middle of a strand; the strands lie side by side, touching.
   *
   * @param strand 0 for the first
   */
  List<Bead> strand(int strand) {
    double behind = strand * width();
    List<Bead> beads = new ArrayList<>();
    for (Knot knot : knots) {
      if (knot.s() >= Math.min(behind, path.length() / 2)) {
        double angle = start + sign() * turnedAt(knot.s() - behind);
        beads.add(new Bead(at(knot, angle), knot.bark(), knot.turned()));
      }
    }
    return beads;
  }

  private Point3 at(Knot knot, double angle) {
    Direction3 way = knot.bark().direction();
    Vector3 out =
        knot.across()
            .times(Math.cos(angle))
            .plus(way.vector().cross(knot.across()).times(Math.sin(angle)));
    return knot.bark().point().plus(out.times(knot.bark().radius() + coil.gauge() / 2));
  }

  /** Angle turned at a length along the axis, straight between the knots [rad]. */
  private double turnedAt(double s) {
    int low = 0;
    int high = knots.size() - 1;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (knots.get(middle).s() <= s) {
        low = middle;
      } else {
        high = middle;
      }
    }
    Knot a = knots.get(low);
    Knot b = knots.get(high);
    return a.turned() + (s - a.s()) / (b.s() - a.s()) * (b.turned() - a.turned());
  }
}
