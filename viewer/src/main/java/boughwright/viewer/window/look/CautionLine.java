// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Graphics;
import java.util.Arrays;
import java.util.stream.Collectors;
import net.miginfocom.swing.MigLayout;

/** Cautions where a person acts: a bar at the left, the word Caution, what to do. */
public final class CautionLine extends HighAsWide {
  private static final long serialVersionUID = 1L;
  private static final int BAR = 4;

  public CautionLine(Caution... cautions) {
    super(new MigLayout("insets 4 14 4 0, fillx", "[grow,fill,0:pref]", ""));
    String words = Arrays.stream(cautions).map(Caution::words).collect(Collectors.joining(" "));
    Prose prose = new Prose("Caution. " + words, Shade.CAUTION);
    add(prose, "wmin 0, growx");
  }

  @Override
  protected void paintComponent(Graphics pen) {
    super.paintComponent(pen);
    pen.setColor(Theme.colour(Shade.CAUTION));
    pen.fillRect(0, 2, Theme.px(BAR), getHeight() - 4);
  }
}
