// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionLaw;
import java.util.HashMap;
import java.util.Map;

/** The sections along a span once all that creeps back has crept back. */
public final class FreedLine implements WoodLine {
  private final WoodLine held;
  private final Map<Double, WoodSection> known = new HashMap<>();

  /** For the sections as they were held. */
  public FreedLine(WoodLine held) {
    this.held = held;
  }

  @Override
  public WoodSection at(double s) {
    return known.computeIfAbsent(s, place -> held.at(place).freed());
  }

  @Override
  public SectionLaw settledAt(double s) {
    return held.settledAt(s);
  }
}
