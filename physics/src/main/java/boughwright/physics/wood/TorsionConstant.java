// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

/** Torsion constants of sections from which something is missing. */
final class TorsionConstant {
  private TorsionConstant() {}

  /**
   * The torsion constant J [m4]. Dead wood twists like the rest.
   *
   * <p>A closed tube has pi (R^4 - r^4) / 2. A slot lowers it as A^4 / (4 pi^2 Ip), Saint-Venant's
   * approximation for solid sections (Timoshenko and Goodier, Theory of Elasticity, chapter 10;
   * from memory), exact for a disc. A slot through to the hollow leaves an open thin section of
   * wall t and length b: b t^3 / 3 (the same chapter, from memory).
   *
   * @param area its area [m2]
   * @param polar its polar second moment about the centroid [m4]
   */
  static double of(SectionShape shape, double area, double polar) {
    double outer = Math.pow(shape.radius(), 4);
    double inner = Math.pow(shape.hollow(), 4);
    double tube = Math.PI / 2 * (outer - inner);
    if (!shape.slot().exists()) {
      return tube;
    }
    double wall = shape.radius() - shape.hollow();
    if (shape.hollow() > 0 && shape.slot().depth() >= wall) {
      double length = Math.PI * (shape.radius() + shape.hollow()) - shape.slot().width();
      return Math.max(wall, length) * wall * wall * wall / 3;
    }
    double whole = Math.PI * (shape.radius() * shape.radius() - shape.hollow() * shape.hollow());
    double left = Math.pow(area / whole, 4);
    return tube * left * tube / polar;
  }
}
