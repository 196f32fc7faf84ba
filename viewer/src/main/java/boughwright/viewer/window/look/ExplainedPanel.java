// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;

/** What shows a number and can be reached by keyboard; F1 or Enter opens the explanation. */
abstract class ExplainedPanel extends HighAsWide implements Explained {
  private static final long serialVersionUID = 1L;

  private final String title;
  private transient Optional<Explanation> explanation = Optional.empty();

  /**
   * @param name name for tests, such as {@code pull.tension}
   * @param title what a person calls the number
   */
  ExplainedPanel(String name, String title, LayoutManager layout) {
    super(layout);
    this.title = title;
    setName(name);
    setFocusable(true);
    listen();
  }

  private void listen() {
    for (int key : new int[] {KeyEvent.VK_F1, KeyEvent.VK_ENTER}) {
      getInputMap().put(KeyStroke.getKeyStroke(key, 0), "explain");
    }
    getActionMap()
        .put(
            "explain",
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                explain();
              }
            });
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent event) {
            Focus.reveal(ExplainedPanel.this);
            repaint();
          }

          @Override
          public void focusLost(FocusEvent event) {
            repaint();
          }
        });
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
          }
        });
  }

  /** What a person calls the number. */
  String title() {
    return title;
  }

  /** Takes what it says of its number when asked; empty for nothing. */
  void take(Optional<Explanation> what) {
    explanation = what;
    setToolTipText(what.map(ExplanationPopup::tip).orElse(null));
  }

  /** Says for those who do not see it what is shown. */
  void speak(String shown, String more) {
    getAccessibleContext().setAccessibleName(title + ": " + shown);
    getAccessibleContext()
        .setAccessibleDescription(
            (more + " " + explanation.map(ExplanationPopup::spoken).orElse("")).strip());
  }

  @Override
  public Optional<Explanation> explanation() {
    return explanation;
  }

  @Override
  public void explain() {
    explanation.ifPresent(what -> ExplanationPopup.show(this, title, what));
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new Spoken();
    }
    return accessibleContext;
  }

  /** It is a label that can be reached. */
  private final class Spoken extends AccessibleJPanel {
    private static final long serialVersionUID = 1L;

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.LABEL;
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    if (isFocusOwner()) {
      Focus.ring((Graphics2D) graphics.create(), this);
    }
  }
}
