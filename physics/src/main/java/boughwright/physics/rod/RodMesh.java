// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * A rod model cut into elements; only the part that carries load.
 *
 * <p>Element {@code e} goes from node {@code parent[e]} to node {@code e}; node {@link
 * RodSpan#CLAMP} is the clamp. Every element comes after its parent. Each has two Gauss points.
 * Matrices are 3x3, row by row.
 */
final class RodMesh {
  /** Gauss points of an element, as fractions of its length. */
  static final double GAUSS_1 = 0.5 - Math.sqrt(3) / 6;

  static final double GAUSS_2 = 0.5 + Math.sqrt(3) / 6;

  final RodModel model;
  final int count;
  final int[] parent;

  /** Length of each element [m], shape (count). */
  final double[] h;

  /** Span of each element, and where on it the element starts [m], shape (count). */
  final int[] span;

  final double[] from;

  /** Rest curvature at the Gauss points [rad/m, section frame], shape (count, 2, 3). */
  final double[] rest;

  /** Section law at the Gauss points, shape (count, 2). */
  final SectionLaw[] law;

  /** Kink at the start of the element, or null for none, shape (count)(9). */
  final double[][] turn;

  /** Rigid link from the parent node to the start, or null [m, node frame], shape (count)(3). */
  final double[][] offset;

  final double[] base;
  final double[] baseFrame;

  RodMesh(RodModel model, int count) {
    this.model = model;
    this.count = count;
    parent = new int[count];
    h = new double[count];
    span = new int[count];
    from = new double[count];
    rest = new double[6 * count];
    law = new SectionLaw[2 * count];
    turn = new double[count][];
    offset = new double[count][];
    base = new double[] {model.base().x(), model.base().y(), model.base().z()};
    baseFrame = Mat3.of(model.baseFrame());
  }

  /** Sets one element; its kink and link only where it starts a span. */
  void set(int e, int parentNode, Stretch stretch, boolean startsSpan) {
    RodSpan rodSpan = model.spans().get(stretch.span());
    parent[e] = parentNode;
    h[e] = stretch.to() - stretch.from();
    span[e] = stretch.span();
    from[e] = stretch.from();
    for (int g = 0; g < 2; g++) {
      law[2 * e + g] = rodSpan.section().at(stretch.from() + (g == 0 ? GAUSS_1 : GAUSS_2) * h[e]);
      rest[6 * e + 3 * g] = rodSpan.restCurvature().x();
      rest[6 * e + 3 * g + 1] = rodSpan.restCurvature().y();
      rest[6 * e + 3 * g + 2] = rodSpan.restCurvature().z();
    }
    if (startsSpan) {
      turn[e] = rodSpan.turn().w() == 1 ? null : Mat3.of(rodSpan.turn());
      double[] link = {rodSpan.offset().x(), rodSpan.offset().y(), rodSpan.offset().z()};
      offset[e] = rodSpan.offset().norm() == 0 ? null : link;
    }
  }

  /**
   * A part of a span.
   *
   * @param span index of the span
   * @param from where it starts [m]
   * @param to where it ends [m]
   */
  record Stretch(int span, double from, double to) {}
}
