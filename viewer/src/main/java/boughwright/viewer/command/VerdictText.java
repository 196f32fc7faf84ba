// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.Species;
import boughwright.physics.trial.Verdict;
import boughwright.viewer.scene.VerdictWords;
import java.util.Optional;

/** The answer of a trial in a grower's words. */
final class VerdictText {
  private VerdictText() {}

  /** The line a person reads first; it names the wood that stands in for a proxy. */
  static String line(Verdict verdict, Optional<Species> species) {
    return VerdictWords.line(verdict.level(), species);
  }

  /** Why, what would change it, and what season and life say. */
  static void write(TextPage page, Verdict verdict) {
    brief(page, verdict);
    if (!verdict.life().isEmpty()) {
      page.heading("Whether the branch lives on, apart from breaking");
      verdict.life().forEach(page::point);
    }
  }

  /** The same for a plain branch, of which nobody knows what it carries. */
  static void brief(TextPage page, Verdict verdict) {
    page.heading("Why");
    page.inner(verdict.reason());
    if (!verdict.firstChange().isBlank()) {
      page.heading("What would change it first");
      page.inner(verdict.firstChange());
    }
    if (!verdict.season().isEmpty()) {
      page.heading("Season and condition");
      verdict.season().forEach(page::point);
    }
  }
}
