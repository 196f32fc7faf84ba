// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.LimitSample;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.Risk;
import java.util.Comparator;
import java.util.Optional;

/** What slight yielding on the inside of a bend means: work, not danger. */
final class YieldText {
  private YieldText() {}

  static void write(TextPage page, Peak peak, Risk risk) {
    Optional<LimitSample> near =
        risk.limits().stream()
            .filter(limit -> limit.segment().equals(peak.segment()))
            .min(Comparator.comparingDouble(limit -> Math.abs(limit.along() - peak.along())));
    near.ifPresent(limit -> page.inner(words(peak.compressionStrain(), limit)));
  }

  private static String words(double squeezed, LimitSample limit) {
    String from = Shown.percent(limit.yield());
    if (squeezed < limit.yield()) {
      return "The inside stays below "
          + from
          + ", where fibres begin to flow: let go now and the limb springs back whole.";
    }
    if (squeezed < limit.kink().low()) {
      return "The inside yields slightly, from "
          + from
          + " on: the normal working range of a bend, no danger. Let go, and part of the bend"
          + " stays.";
    }
    return "The inside yields from "
        + from
        + " on, which by itself is the normal working range; here it goes on to where some wood"
        + " wrinkles.";
  }
}
