// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.HighAsWide;
import java.awt.Cursor;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A front in a list: its picture, what it is, and the way to it. */
final class FrontCard {
  private final JPanel panel;
  private final JPanel side;
  private final PictureView picture = new PictureView();

  /**
   * @param name name for tests
   * @param title what it is called
   * @param words what is told of it
   * @param go goes there
   */
  FrontCard(String name, String title, String words, Runnable go) {
    JButton button = Controls.named(Controls.button("Go there"), name, "Go to front " + title);
    button.addActionListener(event -> go.run());
    side = Controls.stack(Controls.title(title));
    add(Controls.remark(words));
    add(button);
    picture.setName(name + ".picture");
    picture.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
    picture.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent event) {
            go.run();
          }
        });
    panel =
        new HighAsWide(new MigLayout("fillx, insets 0, gapx 8", "[][grow,fill,0:pref]", "[top]"));
    panel.add(picture, "w pref!, aligny top");
    panel.add(side, "wmin 0, growx, aligny top");
  }

  /** Puts something under the words. */
  void add(JComponent part) {
    side.add(part, "wmin 0, growx, gaptop 4");
  }

  void show(Optional<BufferedImage> image) {
    picture.show(image);
  }

  JComponent component() {
    return panel;
  }
}
