// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.front.FrontScore;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.viewer.scene.FrontWords;
import boughwright.viewer.window.look.BarReading;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Reading;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;

/** The score of the front that is seen, and what it is made of. */
final class MeasureBars {
  private final Reading total = new Reading("choose.score", "Score of this front");
  private final Map<FrontMeasure, BarReading> bars = new EnumMap<>(FrontMeasure.class);
  private final JComponent section;

  MeasureBars() {
    for (FrontMeasure measure : FrontMeasure.values()) {
      bars.put(measure, new BarReading(MeasureWords.id(measure), MeasureWords.title(measure)));
    }
    section =
        Controls.section(
            "What is seen from here",
            total,
            Controls.stack(bars.values().toArray(JComponent[]::new)));
  }

  JComponent component() {
    return section;
  }

  /**
   * Shows what was measured.
   *
   * @param score what was measured; empty where nothing can be
   */
  void show(Optional<FrontScore> score) {
    if (score.isEmpty()) {
      total.clear("");
      bars.values().forEach(bar -> bar.clear(""));
      return;
    }
    if (score.get().isSaid()) {
      total.show(
          FrontWords.score(score.get().total()) + " of 100",
          FrontWords.pose(score.get().pose()),
          MeasureWords.aboutScore());
    } else {
      total.clear("Nothing that counts can be said of this tree.");
    }
    for (FrontMeasure measure : FrontMeasure.values()) {
      BarReading bar = bars.get(measure);
      score
          .get()
          .part(measure)
          .ifPresentOrElse(
              part ->
                  bar.show(
                      FrontWords.brief(measure, part.value()),
                      part.merit(),
                      MeasureWords.about(part)),
              () -> bar.clear(MeasureWords.unsaid(measure)));
    }
  }
}
