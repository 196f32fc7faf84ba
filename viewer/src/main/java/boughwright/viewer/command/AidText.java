// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.AidEffect;
import java.util.List;

/** What aids do and cost, for the person at the bench. */
final class AidText {
  private AidText() {}

  /** Writes what each aid does; nothing where there is none. */
  static void write(TextPage page, List<AidEffect> effects) {
    for (AidEffect effect : effects) {
      page.heading(title(effect) + " on " + effect.on());
      effect.says().forEach(page::point);
      page.point("Price: " + effect.price());
    }
  }

  private static String title(AidEffect effect) {
    return switch (effect.aid()) {
      case "wrap" -> "Wrap";
      case "slot" -> "Slot";
      case "hollow" -> "Hollow";
      case "relief-cut" -> effect.cuts().size() > 1 ? "Relief cuts" : "Relief cut";
      default -> "Lever";
    };
  }
}
