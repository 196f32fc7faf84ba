// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import javax.swing.JComponent;

/** Chooses what everything else serves, before any bend. */
public final class ChoosePanel implements ModePanel {
  private final Canvas canvas;
  private final CanvasTool tool;
  private final FrontPage front;
  private final JComponent whole;

  /** A panel for a tree on a canvas. */
  public ChoosePanel(Workspace workspace, Canvas canvas, Background background) {
    this.canvas = canvas;
    Turning turning = new Turning(workspace, canvas.facing());
    tool = new TurnTool(workspace, canvas, turning);
    front = new FrontPage(workspace, canvas, background, turning);
    whole = Controls.scrolling(front.component());
  }

  @Override
  public String name() {
    return "Choose";
  }

  @Override
  public char mnemonic() {
    return 'O';
  }

  @Override
  public JComponent component() {
    return whole;
  }

  @Override
  public List<Command> commands() {
    return front.commands();
  }

  @Override
  public void shown() {
    front.shown();
    canvas.use(tool);
  }

  @Override
  public void hidden() {
    canvas.useNone();
    front.hidden();
  }
}
