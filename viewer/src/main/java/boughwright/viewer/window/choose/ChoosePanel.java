// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.look.Pages;
import boughwright.viewer.window.look.Pages.Page;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import javax.swing.JComponent;

/** Chooses what everything else serves, before any bend. */
public final class ChoosePanel implements ModePanel {
  private final Canvas canvas;
  private final CanvasTool tool;
  private static final Page FRONT = new Page("front", "Front", 'r', false);
  private static final Page ROOTS = new Page("roots", "Root base", 'b', false);
  private static final Page STRUCTURE = new Page("structure", "Structure", 's', false);

  private final Turning turning;
  private final FrontPage front;
  private final RootPage roots;
  private final StructurePage structure;
  private final Pages pages = new Pages("choose", List.of(FRONT, ROOTS, STRUCTURE));
  private boolean inView;

  /** A panel for a tree on a canvas. */
  public ChoosePanel(Workspace workspace, Canvas canvas, Background background) {
    this.canvas = canvas;
    turning = new Turning(workspace, canvas.facing());
    tool = new TurnTool(workspace, canvas, turning);
    front = new FrontPage(workspace, canvas, background, turning);
    roots = new RootPage(workspace, turning);
    structure = new StructurePage(workspace, canvas, turning);
    pages.add(FRONT, front.component());
    pages.add(ROOTS, roots.component());
    pages.add(STRUCTURE, structure.component());
    pages.show(FRONT);
    pages.listen(page -> follow());
    workspace.listen(
        topic -> {
          if (topic == Topic.UNITS) {
            follow();
          }
        });
  }

  /** Lets the page that is seen follow the tree, and no other. */
  private void follow() {
    front.inView(inView && pages.shown().equals(FRONT));
    roots.inView(inView && pages.shown().equals(ROOTS));
    structure.inView(inView && pages.shown().equals(STRUCTURE));
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
    return pages.component();
  }

  @Override
  public List<Command> commands() {
    return front.commands(() -> inView);
  }

  @Override
  public void shown() {
    inView = true;
    turning.begin();
    canvas.use(tool);
    follow();
  }

  @Override
  public void hidden() {
    inView = false;
    follow();
    canvas.useNone();
    turning.end();
  }
}
