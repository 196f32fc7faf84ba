// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Spot;
import java.util.List;
import java.util.Optional;

/** Where the places of a tree are called after an edit; the wood itself has not moved. */
interface Relocation {

  /** The new address of a place; empty if it is gone. */
  Optional<Spot> spot(Spot old);

  /** The new name of a segment as a whole; empty if it is gone. */
  Optional<String> segment(String old);

  /** The new name of the outer end of a segment; empty if it is gone. */
  default Optional<String> outer(String old) {
    return segment(old);
  }

  /** The new addresses of something done to a stretch; empty if that is gone. */
  List<Aid> aid(Aid old);

  /** An aid on another segment, at the same fractions of it. */
  static Aid on(String segment, Aid aid) {
    return Relocation.on(segment, aid, aid.from(), aid.to());
  }

  /** An aid on another stretch. */
  static Aid on(String segment, Aid aid, double from, double to) {
    return new Aid(
        aid.kind(),
        segment,
        from,
        to,
        aid.round(),
        aid.width(),
        aid.depth(),
        aid.count(),
        aid.extras());
  }
}
