// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of a tape sheet as measured.
 *
 * @param row the text it was read from
 * @param id name of the segment
 * @param parent name of the parent; empty for the trunk base
 * @param kind what it is to the tree
 * @param step from its start to its end [m, tree frame]
 * @param seat where on its parent it starts
 * @param caliperStart caliper at the start; empty if not measured [m]
 * @param caliperEnd caliper at the end; empty if not measured [m]
 * @param joins how it joins its parent; empty for the default
 * @param bark one layer of bark; empty for the tree's [m]
 * @param live whether it carries live growth
 * @param features what the person ticked because it weakens the wood
 * @param note the person's words about it
 */
record TapeRow(
    SheetRow row,
    String id,
    Optional<String> parent,
    Kind kind,
    Vector3 step,
    Seat seat,
    OptionalDouble caliperStart,
    OptionalDouble caliperEnd,
    Optional<Joint> joins,
    OptionalDouble bark,
    Optional<Boolean> live,
    Features features,
    Optional<String> note) {

  /**
   * Where a segment starts on its parent's axis; neither given means the parent's end, or for a
   * root on the trunk the parent's start.
   *
   * @param along fraction of the parent's length from the parent's start [1]
   * @param distance distance from the parent's start [m]
   */
  record Seat(OptionalDouble along, OptionalDouble distance) {
    boolean isEnd() {
      return distance.isEmpty() && along.orElse(1) == 1;
    }
  }
}
