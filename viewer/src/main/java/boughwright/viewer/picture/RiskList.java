// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.FailureRisk;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.Risk;
import boughwright.viewer.scene.FailureWords;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.stream.Collectors;

/** The ways of failing in words: how likely, and where to mark it. */
final class RiskList {
  private static final double INDENT = 36;
  private static final double ROW = 24;

  private final Page page;
  private final Risk risk;

  RiskList(Page page, Risk risk) {
    this.page = page;
    this.risk = risk;
  }

  /** Draws as much of it as there is room for, and says how much is left out. */
  void draw(Rect room) {
    double y = room.y() + page.u(18);
    List<FailureRisk> told = told();
    for (int n = 0; n < told.size(); n++) {
      boolean last = n == told.size() - 1;
      double after = y + height(told.get(n), room) + (last ? 0 : page.u(ROW));
      if (after > room.bottom()) {
        words(told.size() - n + " more: see the printed answer", room, y, Page.Style.KEY_MORE);
        return;
      }
      y = entry(told.get(n), room, y);
    }
    List<FailureRisk> rest = risk.failures().stream().filter(f -> !isTold(f)).toList();
    if (!rest.isEmpty() && y <= room.bottom()) {
      String names =
          rest.stream().map(f -> FailureWords.name(f.mode())).collect(Collectors.joining(", "));
      words(names + ": " + Odds.words(0), room, y, Page.Style.KEY_MORE);
    }
  }

  /** From the baseline of its first line to the foot of its last one [pixels]. */
  private double height(FailureRisk failure, Rect room) {
    return lines(odds(failure), Page.Style.PANEL, room)
        + failure
            .place()
            .map(place -> lines(FailureWords.marked(place), Page.Style.KEY_MORE, room))
            .orElse(0.0)
        - page.u(Page.Style.PANEL.size());
  }

  private double lines(String words, Page.Style style, Rect room) {
    double size = page.u(style.size());
    return Paragraph.lines(words, style.weight(), size, two(room)).size() * size * Page.LEADING;
  }

  private static String odds(FailureRisk failure) {
    return FailureWords.name(failure.mode()) + ": " + Odds.words(failure.probability());
  }

  private List<FailureRisk> told() {
    return risk.failures().stream().filter(RiskList::isTold).toList();
  }

  private static boolean isTold(FailureRisk failure) {
    return failure.mode() == FailureMode.CRACK
        || failure.mode() == FailureMode.KINK
        || Math.max(failure.probability().p(), failure.probability().high()) >= Odds.LEAST;
  }

  private double entry(FailureRisk failure, Rect room, double y) {
    Glyph.draw(
        page,
        Glyph.shape(failure.mode(), room.x() + page.u(13), y - page.u(6), page.u(8)),
        Glyph.colour(failure.mode()),
        false);
    double next = words(odds(failure), room, y, Page.Style.PANEL);
    if (failure.place().isEmpty()) {
      return next + page.u(8);
    }
    return words(FailureWords.marked(failure.place().get()), room, next, Page.Style.KEY_MORE)
        + page.u(8);
  }

  private double words(String words, Rect room, double y, Page.Style style) {
    Point2D from = new Point2D.Double(room.x() + page.u(INDENT), y);
    return page.paragraph(words, from, style, two(room));
  }

  private Paragraph.Room two(Rect room) {
    return new Paragraph.Room(room.width() - page.u(INDENT), 2);
  }
}
