// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionLine;
import java.util.function.DoubleFunction;

/** The sections along a span, whose fibres are known. */
@FunctionalInterface
public interface WoodLine extends SectionLine {
  @Override
  WoodSection at(double s);

  /** Whole round sections of one wood, never bent before. */
  static WoodLine round(SegmentWood wood, SectionLine.RadiusTaper taper) {
    return wood.isElastic()
        ? s -> new ElasticDisc(wood, taper.at(s))
        : s -> new FreshDisc(wood, taper.at(s));
  }

  /** Sections of one wood from which something is missing or dead, never bent before. */
  static WoodLine shaped(SegmentWood wood, DoubleFunction<SectionShape> shape) {
    return new ShapedLine(wood, shape);
  }
}
