// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.ArrayList;
import java.util.List;

/** The places of a section where its living wood may be stretched or crushed most. */
final class Rim {
  private static final int ROUND = 72;
  private static final double[] COS = new double[ROUND];
  private static final double[] SIN = new double[ROUND];

  static {
    for (int k = 0; k < ROUND; k++) {
      COS[k] = Math.cos(2 * Math.PI * k / ROUND);
      SIN[k] = Math.sin(2 * Math.PI * k / ROUND);
    }
  }

  private final SectionShape shape;
  private final List<double[]> places = new ArrayList<>();

  Rim(SectionShape shape) {
    this.shape = shape;
    if (shape.isWhole()) {
      return;
    }
    for (int k = 0; k < ROUND; k++) {
      addAt(2 * Math.PI * k / ROUND, COS[k], SIN[k]);
    }
    if (shape.dead().exists()) {
      addAt(shape.dead().middle() - shape.dead().width() / 2 * (1 + 1e-9));
      addAt(shape.dead().middle() + shape.dead().width() / 2 * (1 + 1e-9));
    }
    if (shape.slot().exists()) {
      addSlot(shape.slot());
    }
  }

  private void addAt(double angle) {
    addAt(angle, Math.cos(angle), Math.sin(angle));
  }

  /** The outermost living place at an angle. */
  private void addAt(double angle, double cos, double sin) {
    double away = shape.dead().covers(angle) ? shape.radius() - shape.dead().depth() : 0;
    double radius = shape.dead().covers(angle) ? away : shape.radius();
    if (radius > shape.hollow()) {
      addIfThere(radius * cos, radius * sin);
    }
  }

  private void addSlot(SectionShape.Groove slot) {
    double floor = shape.radius() - slot.depth();
    double half = slot.width() / 2 * (1 + 1e-9);
    double edge = Math.sqrt(Math.max(0, shape.radius() * shape.radius() - half * half));
    for (double aside : new double[] {-half, half}) {
      addBeside(slot, Math.min(floor, edge), aside);
      addBeside(slot, edge, aside);
    }
  }

  private void addBeside(SectionShape.Groove slot, double up, double aside) {
    double cos = Math.cos(slot.middle());
    double sin = Math.sin(slot.middle());
    double p1 = up * cos - aside * sin;
    double p2 = up * sin + aside * cos;
    double away = Math.hypot(p1, p2);
    boolean onSection = away > shape.hollow() && away <= shape.radius() * (1 + 1e-6);
    if (onSection && !shape.isDead(p1, p2)) {
      addIfThere(p1, p2);
    }
  }

  private void addIfThere(double p1, double p2) {
    if (!shape.isCut(p1, p2)) {
      places.add(new double[] {p1, p2});
    }
  }

  private boolean isLiving(double p1, double p2) {
    return !shape.isCut(p1, p2) && !shape.isDead(p1, p2);
  }

  /** Strains of the most stretched and the most crushed living place. */
  FibreStrains strains(double middle, double e1, double e2) {
    double bend = Math.hypot(e1, e2);
    double tension = Double.NEGATIVE_INFINITY;
    double compression = Double.NEGATIVE_INFINITY;
    double p1 = bend > 0 ? -shape.radius() * e2 / bend : 0;
    double p2 = bend > 0 ? shape.radius() * e1 / bend : 0;
    if (isLiving(p1, p2)) {
      tension = middle + shape.radius() * bend;
    }
    if (isLiving(-p1, -p2)) {
      compression = shape.radius() * bend - middle;
    }
    for (double[] place : places) {
      double strain = middle + e1 * place[1] - e2 * place[0];
      tension = Math.max(tension, strain);
      compression = Math.max(compression, -strain);
    }
    return new FibreStrains(Math.max(0, tension), Math.max(0, compression));
  }
}
