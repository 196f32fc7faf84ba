// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Dimension;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** What a number is, how sure and from where, in a sheet beside it; Esc closes it. */
final class ExplanationPopup {
  private static final int WIDTH = 380;

  private ExplanationPopup() {}

  static void show(JComponent beside, String title, Explanation explanation) {
    JPopupMenu sheet = new JPopupMenu();
    sheet.setName("explanation");
    sheet.getAccessibleContext().setAccessibleName(title);
    sheet.getAccessibleContext().setAccessibleDescription(spoken(explanation));
    JPanel page = new JPanel(new MigLayout("wrap 1, insets 10 14 10 14, gapy 4", "[fill]", ""));
    page.setOpaque(false);
    page.add(Controls.heading(title), "gapbottom 4");
    add(page, "What it is", explanation.what());
    add(page, "How sure", explanation.howSure());
    add(page, "From", explanation.source());
    sheet.add(page);
    sheet
        .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
        .put(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "close");
    sheet.getActionMap().put("close", closing(sheet, beside));
    sheet.show(beside, 0, beside.getHeight() + 4);
  }

  private static void add(JPanel page, String what, String words) {
    if (words.isEmpty()) {
      return;
    }
    page.add(Controls.note(what), "gaptop 4");
    Prose prose = Controls.prose(words);
    int width = Theme.px(WIDTH);
    prose.setSize(new Dimension(width, Short.MAX_VALUE));
    page.add(prose, "w " + width + "!");
  }

  private static AbstractAction closing(JPopupMenu sheet, JComponent beside) {
    return new AbstractAction() {
      private static final long serialVersionUID = 1L;

      @Override
      public void actionPerformed(java.awt.event.ActionEvent event) {
        sheet.setVisible(false);
        beside.requestFocusInWindow();
      }
    };
  }

  /** The explanation in one breath, for those who hear it. */
  static String spoken(Explanation explanation) {
    return String.join(" ", explanation.what(), explanation.howSure(), explanation.source())
        .strip();
  }

  /** The explanation as the text of a tool tip. */
  static String tip(Explanation explanation) {
    return "<html><div style='width:"
        + WIDTH * 3 / 4
        + "px'>"
        + escaped(explanation.what())
        + "<br><br>"
        + escaped(explanation.howSure())
        + "<br><br>"
        + escaped(explanation.source())
        + "</div></html>";
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
