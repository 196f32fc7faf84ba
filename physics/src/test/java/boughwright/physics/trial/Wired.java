// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Spot;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Invented branches with wire on them. */
final class Wired {
  static final double LENGTH = 0.3;

  private Wired() {}

  /** A level branch of green wood as JSON, 10 mm thick at its start. */
  static final String GREEN = "{\"name\": \"test wood\", \"moe_GPa\": 4, \"response\": \"fibre\"}";

  static final String ELASTIC =
      "{\"name\": \"test wood\", \"moe_GPa\": 4, \"response\": \"elastic\"}";

  /** A branch clamped at its start, level along x, with nothing on it. */
  static TrialRequest branch(Path folder, String wood, double start, double end) {
    return new TreeText(wood)
        .segment(
            TreeText.text(
                "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [300, 0, 0], \"caliper_start_mm\": %s, \"caliper_end_mm\": %s",
                start, end))
        .proposal("\"about\": \"t\"")
        .request(folder);
  }

  /** A branch that hangs by its own weight in its measured shape. */
  static TrialRequest heavy(Path folder) {
    return new TreeText(ELASTIC)
        .segment(
            "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                + " \"end_mm\": [300, 0, 0], \"caliper_start_mm\": 8, \"caliper_end_mm\": 8")
        .plan("\"self_weight\": true,")
        .proposal("\"about\": \"t\"")
        .request(folder);
  }

  static Coil coil(Material metal, double gauge, int strands) {
    return coil(metal, gauge, strands, new Spot("t", 0), new Spot("t", 1));
  }

  static Coil coil(Material metal, double gauge, int strands, Spot from, Spot to) {
    return new Coil(from, to, metal, gauge, strands, Math.toRadians(50), Hand.RIGHT, Map.of());
  }

  /** A pull by hand at a place, straight down. */
  static HandBend hand(String segment, double along, double move) {
    return new HandBend("h", new Spot(segment, along), Direction3.UP.opposite(), move, Map.of());
  }

  static TrialRequest with(TrialRequest request, List<Coil> coils, List<HandBend> hands) {
    return request.changing(proposal -> proposal.withCoils(coils).withHandBends(hands));
  }
}
