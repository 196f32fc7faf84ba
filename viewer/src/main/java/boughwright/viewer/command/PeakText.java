// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.Peak;

/** How hard the outermost fibres work where the wood is bent hardest. */
final class PeakText {
  private PeakText() {}

  static void strains(TextPage page, Peak peak) {
    page.table(
        new TextTable(1)
            .row("the stretched side, by", Shown.percent(peak.tensionStrain()))
            .row("the squeezed side, by", Shown.percent(peak.compressionStrain()))
            .row("bending strain (radius x curvature)", Shown.percent(peak.bendingStrain())));
  }
}
