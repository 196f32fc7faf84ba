// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.front.FrontScore;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.problem.VisibleText;
import boughwright.viewer.scene.FrontWords;
import boughwright.viewer.window.look.BarReading;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Reading;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Marked fronts side by side: pictures, scores, measures. */
final class FrontComparison {
  /** More columns than this do not fit beside the tree. */
  static final int MOST = 3;

  private static final int LEAST = 2;

  private final Turning turning;
  private final JPanel table = new JPanel();

  /** A front to be compared, with its picture once that is drawn. */
  record Column(MarkedFront front, Optional<BufferedImage> picture) {}

  FrontComparison(Turning turning) {
    this.turning = turning;
    table.setOpaque(false);
    table.setName("choose.comparison");
  }

  JComponent component() {
    return table;
  }

  /** Shows two fronts or more beside one another; fewer are not compared. */
  void show(List<Column> columns) {
    table.removeAll();
    table.setVisible(columns.size() >= LEAST);
    if (columns.size() < LEAST) {
      return;
    }
    table.setLayout(
        new MigLayout(
            "wrap " + columns.size() + ", fillx, insets 8 0 0 0, gap 0",
            "[grow,fill,sg,0:pref]".repeat(columns.size())));
    for (Column column : columns) {
      PictureView picture = new PictureView();
      picture.show(column.picture());
      JPanel head = Controls.section(VisibleText.of(column.front().id()), picture);
      table.add(head, "wmin 0, growx, aligny bottom, gapright 8, gapbottom 8");
    }
    List<Optional<FrontScore>> scores =
        columns.stream()
            .map(one -> turning.judge().map(judge -> judge.score(Turning.pose(one.front()))))
            .toList();
    for (int n = 0; n < columns.size(); n++) {
      table.add(score(columns.get(n), scores.get(n)), "wmin 0, growx, aligny top");
    }
    for (FrontMeasure measure : FrontMeasure.values()) {
      for (int n = 0; n < columns.size(); n++) {
        table.add(bar(measure, n, scores.get(n)), "wmin 0, growx, aligny top");
      }
    }
    table.revalidate();
    table.repaint();
  }

  private JComponent score(Column column, Optional<FrontScore> score) {
    Reading reading = new Reading("choose.compared-score-" + column.front().id(), "Score");
    if (score.filter(FrontScore::isSaid).isPresent()) {
      reading.show(FrontWords.score(score.get().total()), "of 100", MeasureWords.aboutScore());
    } else {
      reading.clear("cannot be said");
    }
    return reading;
  }

  private JComponent bar(FrontMeasure measure, int column, Optional<FrontScore> score) {
    BarReading bar =
        new BarReading(
            MeasureWords.id(measure).replace("choose.", "choose.compared-") + "-" + column,
            MeasureWords.title(measure));
    score
        .flatMap(one -> one.part(measure))
        .ifPresentOrElse(
            part ->
                bar.show(
                    FrontWords.brief(measure, part.value()),
                    part.merit(),
                    MeasureWords.about(part)),
            () -> bar.clear(""));
    return bar;
  }
}
