// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Focus;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.AlphaComposite;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;

/** Where the tree is painted, layer over layer. */
final class CanvasView extends JComponent {
  private static final long serialVersionUID = 1L;

  private final transient CanvasLayer behind;
  private final transient CanvasLayer over;
  private final transient Supplier<String> words;
  private transient Optional<LivePicture> picture = Optional.empty();
  private final transient List<Runnable> waiting = new ArrayList<>();
  private final transient Fading fading = new Fading(this::repaint);

  /**
   * @param behind what is painted before the wood
   * @param over what is painted after it
   * @param words what is shown and picked, for those who do not see it
   */
  CanvasView(CanvasLayer behind, CanvasLayer over, Supplier<String> words) {
    this.behind = behind;
    this.over = over;
    this.words = words;
    setName("canvas.view");
    setFocusable(true);
    setOpaque(true);
  }

  Optional<LivePicture> picture() {
    return picture;
  }

  void show(LivePicture next) {
    fading.begin();
    picture = Optional.of(next);
    repaint();
    tellDrawn();
  }

  /** Lets the picture that is there go over into the next one, which shows another tree. */
  void fade(boolean slowly) {
    if (slowly) {
      fading.prepare(picture);
    }
  }

  boolean isFading() {
    return fading.isRunning();
  }

  /** Says something in place of the tree. */
  void say(String message) {
    removeAll();
    setLayout(new MigLayout("fill, insets 40", "[center]", "[center]"));
    JComponent prose = Controls.prose(message);
    prose.setName("canvas.message");
    add(prose, "growx, wmax 620");
    revalidate();
    repaint();
    tellDrawn();
  }

  /** Runs something when there is a picture, or a message in its place; at once where there is. */
  void whenDrawn(Runnable run) {
    waiting.add(run);
    if (picture.isPresent() || getComponentCount() > 0) {
      tellDrawn();
    }
  }

  private void tellDrawn() {
    List<Runnable> told = List.copyOf(waiting);
    waiting.clear();
    told.forEach(Runnable::run);
  }

  /** Device pixels for each user pixel. */
  double deviceScale() {
    return getGraphicsConfiguration() == null
        ? 1
        : getGraphicsConfiguration().getDefaultTransform().getScaleX();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D pen = (Graphics2D) graphics.create();
    try {
      pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      pen.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      pen.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
      pen.setColor(Theme.colour(Shade.PAPER));
      pen.fillRect(0, 0, getWidth(), getHeight());
      if (getComponentCount() == 0) {
        paintTree(pen);
      }
      if (isFocusOwner()) {
        Focus.ring((Graphics2D) pen.create(), this);
      }
    } finally {
      pen.dispose();
    }
  }

  private void paintTree(Graphics2D pen) {
    behind.paint(pen);
    fading.leaving().ifPresent(p -> paint(pen, p, fading.leavingShare()));
    picture.ifPresent(p -> paint(pen, p, fading.comingShare()));
    over.paint(pen);
  }

  private void paint(Graphics2D pen, LivePicture which, float share) {
    Graphics2D own = (Graphics2D) pen.create();
    own.setComposite(AlphaComposite.SrcOver.derive(share));
    // a picture is of another size only while it moves and is coarser, or until the window that
    // grew has its own: to smooth it on the event thread takes seven times as long
    own.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
    own.drawImage(which.wood(), 0, 0, getWidth(), getHeight(), null);
    which.words().ifPresent(words -> own.drawImage(words, 0, 0, getWidth(), getHeight(), null));
    own.dispose();
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new Accessible();
    }
    return accessibleContext;
  }

  /** Says what a person who does not see the tree would want to know of it. */
  private final class Accessible extends AccessibleJComponent {
    private static final long serialVersionUID = 1L;

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.CANVAS;
    }

    @Override
    public String getAccessibleName() {
      return "Tree";
    }

    @Override
    public String getAccessibleDescription() {
      return words.get();
    }
  }
}
