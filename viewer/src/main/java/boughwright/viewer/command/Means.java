// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.HeldBy;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** By what means a bend is made and held, as it is told. */
final class Means {
  private Means() {}

  static void write(TextPage page, HeldBy means, boolean details) {
    CoilText.write(page, means.coils());
    CoilText.choices(page, means.wires());
    means.hardware().ifPresent(found -> HardwareText.write(page, found, details));
    AidText.write(page, means.aids());
  }

  static void putInto(ObjectNode trial, HeldBy means) {
    means.hardware().ifPresent(found -> trial.set("hardware", HardwareJson.of(found)));
    if (!means.aids().isEmpty()) {
      trial.set("aids", AidJson.of(means.aids()));
    }
    if (!means.coils().isEmpty()) {
      trial.set("coils", CoilJson.of(means.coils()));
    }
    if (!means.wires().isEmpty()) {
      trial.set("wire", CoilJson.choices(means.wires()));
    }
  }
}
