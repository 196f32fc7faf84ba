// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.function.DoubleFunction;

/** Sections of one wood from which something is missing or dead, never bent before. */
final class ShapedLine implements WoodLine {
  private final SegmentWood wood;
  private final DoubleFunction<SectionShape> shape;
  private Known last = new Known(Double.NaN, null);

  /** The section asked for last; many questions go to one place. */
  private record Known(double s, WoodSection section) {}

  ShapedLine(SegmentWood wood, DoubleFunction<SectionShape> shape) {
    this.wood = wood;
    this.shape = shape;
  }

  @Override
  public WoodSection at(double s) {
    Known known = last;
    if (known.s() != s) {
      SectionShape here = shape.apply(s);
      known =
          new Known(
              s, here.dead().exists() ? new FibreSection(wood, here) : new CutDisc(wood, here));
      last = known;
    }
    return known.section();
  }
}
