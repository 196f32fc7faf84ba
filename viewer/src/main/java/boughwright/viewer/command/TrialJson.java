// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.physics.trial.Peak;
import boughwright.physics.trial.TrialResult;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Parts of a trial for programs. */
final class TrialJson {
  private TrialJson() {}

  /** The place bent hardest, and the side that is named: the stretched one. */
  static ObjectNode peak(Peak peak) {
    ObjectNode node = JsonAnswer.object();
    node.put("segment", peak.segment());
    node.put("along", number(peak.along()));
    peak.fromUnion().ifPresent(from -> node.put("from_union_mm", number(1000 * from)));
    node.put("round_deg", number(Math.toDegrees(peak.round())));
    node.put("side", peak.side());
    node.put("fibre", "tension");
    node.put("bending_strain", number(peak.bendingStrain()));
    node.put("tension_strain", number(peak.tensionStrain()));
    node.put("compression_strain", number(peak.compressionStrain()));
    node.put("moment_Nm", number(peak.moment()));
    return node;
  }

  /** The solver's own error; of tensions only where there is a line. */
  static ObjectNode errors(TrialResult trial) {
    TrialResult.ErrorEstimate error = trial.error();
    ObjectNode node = JsonAnswer.object();
    node.put("position_mm", number(1000 * error.position()));
    if (!trial.lines().isEmpty()) {
      node.put("tension_percent", number(100 * error.tension()));
    }
    node.put("strain_percent", number(100 * error.strain()));
    return node;
  }
}
