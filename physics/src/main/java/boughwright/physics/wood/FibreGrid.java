// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A section as fibres: Gauss-Legendre points over rings and arcs that end where dead wood does. A
 * slot is taken out by fibres of negative area, so that its straight sides are met.
 */
final class FibreGrid {
  private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();
  private static final int RINGS = 9;
  private static final int ROUND = 36;
  private static final int RING_ROUND = 24;
  private static final int SLOT_ACROSS = 10;
  private static final int SLOT_DEEP = 12;

  final int count;

  /** Places of the fibres along section axes 1 and 2 [m]. */
  final double[] p1;

  final double[] p2;

  /** Areas [m2]. */
  final double[] area;

  /** Whether a fibre flows when it is crushed. */
  final boolean[] flows;

  private record Fibre(double p1, double p2, double area, boolean flows) {}

  private FibreGrid(List<Fibre> fibres) {
    count = fibres.size();
    p1 = fibres.stream().mapToDouble(Fibre::p1).toArray();
    p2 = fibres.stream().mapToDouble(Fibre::p2).toArray();
    area = fibres.stream().mapToDouble(Fibre::area).toArray();
    flows = new boolean[count];
    for (int i = 0; i < count; i++) {
      flows[i] = fibres.get(i).flows();
    }
  }

  static FibreGrid of(SectionShape shape) {
    List<Fibre> fibres = new ArrayList<>();
    double inner = shape.hollow();
    double live = shape.dead().exists() ? shape.radius() - shape.dead().depth() : shape.radius();
    if (live > inner) {
      addRings(fibres, inner, Math.min(live, shape.radius()), SectionShape.Face.NONE);
    }
    if (live < shape.radius()) {
      addRings(fibres, Math.max(live, inner), shape.radius(), shape.dead());
    }
    if (shape.slot().exists()) {
      addSlot(fibres, shape);
    }
    return new FibreGrid(fibres);
  }

  /**
   * The same fibres with a ring of new wood round them, none where the bark is gone: at its root
   * mean square radius, so that area and second moment are whole.
   *
   * @param shape the section as it was before any ring
   * @param from radius at which the ring starts [m]
   * @param thickness its thickness [m]
   * @param stiffness its modulus over that of the old wood, which scales its area [1]
   */
  FibreGrid withRing(SectionShape shape, double from, double thickness, double stiffness) {
    List<Fibre> fibres = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      fibres.add(new Fibre(p1[i], p2[i], area[i], flows[i]));
    }
    double to = from + thickness;
    double radius = Math.sqrt((from * from + to * to) / 2);
    double step = 2 * Math.PI / RING_ROUND;
    double each = stiffness * (to * to - from * from) / 2 * step;
    for (int j = 0; j < RING_ROUND; j++) {
      double c = shape.radius() * (1 - 1e-9) * Math.cos(j * step);
      double s = shape.radius() * (1 - 1e-9) * Math.sin(j * step);
      if (!shape.isDead(c, s) && !shape.isCut(c, s)) {
        add(fibres, radius, j * step, each, true);
      }
    }
    return new FibreGrid(fibres);
  }

  /** Rings of even area between two radii, in arcs of dead and of living wood. */
  private static void addRings(List<Fibre> fibres, double from, double to, SectionShape.Face dead) {
    GaussIntegrator rings = GAUSS.legendre(RINGS, from * from / 2, to * to / 2);
    for (int k = 0; k < RINGS; k++) {
      double radius = Math.sqrt(2 * rings.getPoint(k));
      double weight = rings.getWeight(k);
      if (!dead.exists() || dead.width() >= 2 * Math.PI) {
        double step = 2 * Math.PI / ROUND;
        for (int j = 0; j < ROUND; j++) {
          double angle = (j + (double) k / RINGS) * step;
          add(fibres, radius, angle, weight * step, !dead.exists());
        }
      } else {
        double half = dead.width() / 2;
        double other = dead.middle() + Math.PI;
        addArc(fibres, radius, weight, new Arc(dead.middle(), half, false));
        addArc(fibres, radius, weight, new Arc(other, Math.PI - half, true));
      }
    }
  }

  private record Arc(double middle, double half, boolean flows) {}

  private static void addArc(List<Fibre> fibres, double radius, double weight, Arc arc) {
    int points = Math.max(4, (int) Math.ceil(ROUND * arc.half() / Math.PI));
    GaussIntegrator around =
        GAUSS.legendre(points, arc.middle() - arc.half(), arc.middle() + arc.half());
    for (int j = 0; j < points; j++) {
      add(fibres, radius, around.getPoint(j), weight * around.getWeight(j), arc.flows());
    }
  }

  private static void add(
      List<Fibre> fibres, double radius, double angle, double area, boolean flows) {
    fibres.add(new Fibre(radius * Math.cos(angle), radius * Math.sin(angle), area, flows));
  }

  private static void addSlot(List<Fibre> fibres, SectionShape shape) {
    double cos = Math.cos(shape.slot().middle());
    double sin = Math.sin(shape.slot().middle());
    double half = Math.min(shape.slot().width() / 2, shape.radius() * (1 - 1e-9));
    GaussIntegrator across = GAUSS.legendre(SLOT_ACROSS, -half, half);
    for (int j = 0; j < SLOT_ACROSS; j++) {
      double aside = across.getPoint(j);
      double top = Math.sqrt(shape.radius() * shape.radius() - aside * aside);
      double hole = Math.sqrt(Math.max(0, shape.hollow() * shape.hollow() - aside * aside));
      double floor = Math.max(shape.radius() - shape.slot().depth(), hole > 0 ? hole : -top);
      if (floor >= top) {
        continue;
      }
      GaussIntegrator down = GAUSS.legendre(SLOT_DEEP, floor, top);
      for (int k = 0; k < SLOT_DEEP; k++) {
        double up = down.getPoint(k);
        double p1 = up * cos - aside * sin;
        double p2 = up * sin + aside * cos;
        double gone = -across.getWeight(j) * down.getWeight(k);
        fibres.add(new Fibre(p1, p2, gone, !shape.isDead(p1, p2)));
      }
    }
  }

  double sum() {
    double sum = 0;
    for (double a : area) {
      sum += a;
    }
    return sum;
  }

  /** Polar second moment about the centroid [m4]. */
  double polar() {
    double s1 = 0;
    double s2 = 0;
    double polar = 0;
    for (int i = 0; i < count; i++) {
      s1 += area[i] * p1[i];
      s2 += area[i] * p2[i];
      polar += area[i] * (p1[i] * p1[i] + p2[i] * p2[i]);
    }
    return polar - (s1 * s1 + s2 * s2) / sum();
  }
}
