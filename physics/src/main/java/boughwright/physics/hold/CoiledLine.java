// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.SectionLaw;
import boughwright.physics.wood.WoodLine;
import boughwright.physics.wood.WoodSection;
import java.util.List;

/** Sections of a branch with coils on them. */
public final class CoiledLine implements WoodLine {
  private final WoodLine wood;
  private final List<CoilLine> coils;

  private CoiledLine(WoodLine wood, List<CoilLine> coils) {
    this.wood = wood;
    this.coils = coils;
  }

  /**
   * A branch with coils just wound on; the branch itself where there are none.
   *
   * @param wood its sections
   * @param coils one or more from end to end of them
   */
  public static WoodLine of(WoodLine wood, List<CoilLine> coils) {
    return coils.isEmpty() ? wood : new CoiledLine(wood, List.copyOf(coils));
  }

  @Override
  public WoodSection at(double s) {
    return new CoiledSection(wood.at(s), coils.stream().map(coil -> coil.at(s)).toList());
  }

  /** A branch settles before wire is wound on. */
  @Override
  public SectionLaw settledAt(double s) {
    return wood.settledAt(s);
  }

  /**
   * Sections whose coils, if any, were just wound on in a pose that is at rest.
   *
   * @param line the sections
   * @param pose the pose of the branch without its coils
   * @param span the span of that pose that they are
   */
  public static WoodLine woundIn(WoodLine line, RodPose pose, int span) {
    return changed(line, (coiled, s) -> coiled.woundUnder(pose.moment(span, s)));
  }

  /**
   * Sections with a part of the strength and stiffness of their coils, each of which keeps what it
   * remembers; with a part of 0 the wood alone.
   *
   * @param line sections with or without coils
   * @param part part of the coils that is left, 0 to 1 [1]
   */
  public static WoodLine thinned(WoodLine line, double part) {
    return changed(line, (coiled, s) -> part == 0 ? coiled.wood() : coiled.thinned(part));
  }

  /** What becomes of a coiled section at a place. */
  private interface Change {
    WoodSection of(CoiledSection coiled, double s);
  }

  private static WoodLine changed(WoodLine line, Change change) {
    return new WoodLine() {
      @Override
      public WoodSection at(double s) {
        WoodSection section = line.at(s);
        return section instanceof CoiledSection coiled ? change.of(coiled, s) : section;
      }

      @Override
      public SectionLaw settledAt(double s) {
        return line.settledAt(s);
      }
    };
  }
}
