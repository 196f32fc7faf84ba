// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** One cell of the table of segments as it is to be. */
public sealed interface Cell {

  /** Another name. */
  record Id(String id) implements Cell {}

  /** The segment it is to start on. */
  record Parent(String parent) implements Cell {}

  /** Where on the parent's axis it is to start, 0 to 1 [1]. */
  record Along(double along) implements Cell {}

  /** What it is. */
  record KindOf(Kind kind) implements Cell {}

  /** How it joins. */
  record JointOf(Joint joint) implements Cell {}

  /** Which way it leans [rad]. */
  record Azimuth(double radians) implements Cell {}

  /** How far it rises above level [rad]. */
  record Elevation(double radians) implements Cell {}

  /** How long its axis is [m]. */
  record Length(double metres) implements Cell {}

  /** Diameter over bark at its start [m]. */
  record CaliperStart(double metres) implements Cell {}

  /** Diameter over bark at its end [m]. */
  record CaliperEnd(double metres) implements Cell {}

  /** One layer of its bark; empty for the tree's [m]. */
  record Bark(OptionalDouble metres) implements Cell {}

  /** Whether it carries live growth; empty for not said. */
  record Live(Optional<Boolean> live) implements Cell {}

  /**
   * Cells of one segment.
   *
   * @param id the segment as it is called before the edit
   * @param cells the cells that change
   */
  record Row(String id, List<Cell> cells) {
    public Row {
      Objects.requireNonNull(id, "id");
      cells = List.copyOf(cells);
    }
  }
}
