// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.AidEffect;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.Hardware;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.WireChoice;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/**
 * By what means a bend is made and held, and whether they will do.
 *
 * @param hardware tackle of the lines, and whether the container stands; empty where no pose holds
 * @param aids what is done to the wood first
 * @param coils what the plan's coils hold
 * @param wires wire that would hold what is bent by coil or hand
 */
record Means(
    Optional<Hardware> hardware,
    List<AidEffect> aids,
    List<CoilHold> coils,
    List<WireChoice> wires) {
  static final Means NONE = new Means(Optional.empty(), List.of(), List.of(), List.of());

  static Means of(TrialRequest request, TrialResult result) {
    return result.outcome().holds()
        ? new Means(
            Optional.of(Hardware.of(request, result)),
            AidEffect.of(request),
            CoilHold.of(request),
            WireChoice.of(request))
        : NONE;
  }

  void write(TextPage page, boolean details) {
    CoilText.write(page, coils);
    CoilText.choices(page, wires);
    hardware.ifPresent(found -> HardwareText.write(page, found, details));
    AidText.write(page, aids);
  }

  void putInto(ObjectNode trial) {
    hardware.ifPresent(found -> trial.set("hardware", HardwareJson.of(found)));
    if (!aids.isEmpty()) {
      trial.set("aids", AidJson.of(aids));
    }
    if (!coils.isEmpty()) {
      trial.set("coils", CoilJson.of(coils));
    }
    if (!wires.isEmpty()) {
      trial.set("wire", CoilJson.choices(wires));
    }
  }
}
