// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Looks at shapes the plain way: one straight ray for each point of a fine net, against two spheres
 * and the cone that touches both, or against an ellipsoid. Shares nothing with what it checks.
 */
public final class RayCast {
  private final List<Frustum> wood;
  private final boolean[] inSoil;
  private final List<Ellipsoid> pads;
  private final boolean[] group;

  /** Shape: one per shape [m2]. */
  private double[] seen;

  private double[] clear;
  private double outline;

  /** Takes the shapes. */
  public RayCast(List<Frustum> wood, boolean[] inSoil, boolean[] group, List<Ellipsoid> pads) {
    this.wood = wood;
    this.inSoil = inSoil;
    this.group = group;
    this.pads = pads;
  }

  /** Casts rays a step apart over a square round the origin. */
  public void look(Direction3 toward, double half, double step) {
    Net net = new Net(toward, half, step);
    int count = wood.size() + pads.size();
    seen = new double[count];
    clear = new double[count];
    for (boolean grouped : new boolean[] {false, true}) {
      for (int i = 0; i < count; i++) {
        if ((i < group.length && group[i]) == grouped) {
          net.cast(i, grouped);
        }
      }
    }
    List<double[]> hits = new ArrayList<>();
    for (int n = 0; n < net.first.length; n++) {
      if (net.first[n] >= 0) {
        seen[net.first[n]] += step * step;
        hits.add(new double[] {net.place(n / net.across), net.place(n % net.across)});
      }
    }
    outline = hull(hits);
  }

  /** Which shape each ray meets first; only rays that come near a shape are tried on it. */
  private final class Net {
    private final Direction3 toward;
    private final Vector3 right;
    private final Vector3 up;
    private final double half;
    private final double step;
    private final int across;

    /** Shape: one per ray. */
    private final int[] first;

    private final double[] way;
    private final double[] wayToOthers;

    Net(Direction3 toward, double half, double step) {
      this.toward = toward;
      this.half = half;
      this.step = step;
      right = toward.anySquare().vector();
      up = toward.vector().cross(right);
      across = (int) Math.rint(2 * half / step);
      first = new int[across * across];
      way = new double[first.length];
      wayToOthers = new double[first.length];
      Arrays.fill(first, -1);
      Arrays.fill(way, Double.POSITIVE_INFINITY);
      Arrays.fill(wayToOthers, Double.POSITIVE_INFINITY);
    }

    double place(int n) {
      return (n + 0.5) * step - half;
    }

    private int before(double place) {
      return (int) Math.max(0, Math.min(across, Math.ceil((place + half) / step - 0.5)));
    }

    /** Casts all rays at one shape; those of the group come after all others. */
    void cast(int i, boolean grouped) {
      Vector3 middle = middle(i).minus(Point3.ORIGIN);
      double reach = reach(i);
      double x = middle.dot(right);
      double y = middle.dot(up);
      Vector3 ray = toward.opposite().vector();
      for (int column = before(x - reach); column < before(x + reach); column++) {
        for (int row = before(y - reach); row < before(y + reach); row++) {
          Vector3 from =
              right.times(place(column)).plus(up.times(place(row))).plus(toward.times(10));
          int n = column * across + row;
          double found = i < wood.size() ? piece(i, from, ray) : pad(i, from, ray);
          if (found < way[n]) {
            way[n] = found;
            first[n] = i;
          }
          if (!grouped) {
            wayToOthers[n] = Math.min(wayToOthers[n], found);
          } else if (found < wayToOthers[n]) {
            clear[i] += step * step;
          }
        }
      }
    }
  }

  /** The middle of a ball that holds a whole shape. */
  private Point3 middle(int i) {
    return i < wood.size()
        ? wood.get(i).start().toward(wood.get(i).end(), 0.5)
        : pads.get(i - wood.size()).centre();
  }

  private double reach(int i) {
    if (i < wood.size()) {
      Frustum piece = wood.get(i);
      return piece.length() / 2 + Math.max(piece.startRadius(), piece.endRadius());
    }
    Ellipsoid pad = pads.get(i - wood.size());
    return Math.max(pad.halfX(), Math.max(pad.halfY(), pad.halfZ()));
  }

  private double piece(int i, Vector3 from, Vector3 ray) {
    Frustum piece = wood.get(i);
    List<Double> hits = new ArrayList<>();
    sphere(hits, piece.start(), piece.startRadius(), from, ray);
    sphere(hits, piece.end(), piece.endRadius(), from, ray);
    double less = piece.startRadius() - piece.endRadius();
    if (piece.length() > Math.abs(less)) {
      cone(hits, piece, from, ray);
    }
    if (hits.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    double in = Collections.min(hits);
    double out = Collections.max(hits);
    if (inSoil[i]) {
      double level = -from.z() / ray.z();
      in = ray.z() > 0 ? Math.max(in, level) : in;
      out = ray.z() < 0 ? Math.min(out, level) : out;
    }
    return in < out ? in : Double.POSITIVE_INFINITY;
  }

  private static void sphere(
      List<Double> hits, Point3 middle, double radius, Vector3 from, Vector3 ray) {
    Vector3 off = from.minus(middle.minus(Point3.ORIGIN));
    double half = off.dot(ray);
    double under = half * half - off.dot(off) + radius * radius;
    if (under >= 0) {
      hits.add(-half - Math.sqrt(under));
      hits.add(-half + Math.sqrt(under));
    }
  }

  /** The cone that touches both spheres, between the circles where it does. */
  private static void cone(List<Double> hits, Frustum piece, Vector3 from, Vector3 ray) {
    Vector3 axis = piece.end().minus(piece.start()).times(1 / piece.length());
    double sine = (piece.startRadius() - piece.endRadius()) / piece.length();
    double cosine = Math.sqrt(1 - sine * sine);
    double low = piece.startRadius() * sine;
    double high = piece.length() + piece.endRadius() * sine;
    double wide = piece.startRadius() * cosine;
    double slope = (piece.endRadius() * cosine - wide) / (high - low);
    Vector3 off = from.minus(piece.start().minus(Point3.ORIGIN));
    double offAlong = off.dot(axis);
    double rayAlong = ray.dot(axis);
    Vector3 offAside = off.minus(axis.times(offAlong));
    Vector3 rayAside = ray.minus(axis.times(rayAlong));
    double radius = wide + (offAlong - low) * slope;
    double a = rayAside.dot(rayAside) - slope * slope * rayAlong * rayAlong;
    double b = offAside.dot(rayAside) - radius * slope * rayAlong;
    double c = offAside.dot(offAside) - radius * radius;
    double under = b * b - a * c;
    if (under < 0 || a == 0) {
      return;
    }
    for (double sign : new double[] {-1, 1}) {
      double t = (-b + sign * Math.sqrt(under)) / a;
      double along = offAlong + t * rayAlong;
      if (along >= low && along <= high) {
        hits.add(t);
      }
    }
  }

  private double pad(int i, Vector3 from, Vector3 ray) {
    Ellipsoid pad = pads.get(i - wood.size());
    Vector3 off = unit(pad, from.minus(pad.centre().minus(Point3.ORIGIN)));
    Vector3 way = unit(pad, ray);
    double a = way.dot(way);
    double b = off.dot(way);
    double under = b * b - a * (off.dot(off) - 1);
    return under < 0 ? Double.POSITIVE_INFINITY : (-b - Math.sqrt(under)) / a;
  }

  private static Vector3 unit(Ellipsoid pad, Vector3 vector) {
    Vector3 own = pad.turn().inverse().turn(vector);
    return new Vector3(own.x() / pad.halfX(), own.y() / pad.halfY(), own.z() / pad.halfZ());
  }

  /** Andrew's monotone chain round the points. */
  private static double hull(List<double[]> points) {
    double[][] sorted = points.toArray(double[][]::new);
    Arrays.sort(
        sorted, Comparator.<double[]>comparingDouble(p -> p[0]).thenComparingDouble(p -> p[1]));
    double twice = 0;
    for (int side = 0; side < 2; side++) {
      List<double[]> chain = new ArrayList<>();
      for (int n = 0; n < sorted.length; n++) {
        double[] next = sorted[side == 0 ? n : sorted.length - 1 - n];
        while (chain.size() > 1
            && turn(chain.get(chain.size() - 2), chain.get(chain.size() - 1), next) <= 0) {
          chain.remove(chain.size() - 1);
        }
        chain.add(next);
      }
      for (int n = 1; n < chain.size(); n++) {
        twice += chain.get(n - 1)[0] * chain.get(n)[1] - chain.get(n - 1)[1] * chain.get(n)[0];
      }
    }
    return twice / 2;
  }

  private static double turn(double[] a, double[] b, double[] c) {
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  }

  /** Area seen of a shape [m2]. */
  public double seen(int i) {
    return seen[i];
  }

  /** Area of a shape of the group that nothing outside the group hides [m2]. */
  public double clear(int i) {
    return clear[i];
  }

  /** Area of the tightest outline without hollows round everything [m2]. */
  public double outline() {
    return outline;
  }
}
