// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.look.Pages;
import boughwright.viewer.window.look.Pages.Page;
import boughwright.viewer.window.work.Background;
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

  private static final Page APEX = new Page("apex", "Apex", 'x', false);

  private final Turning turning;
  private final FrontPage front;
  private final RootPage roots;
  private final StructurePage structure;
  private final ApexPage apex;
  private final Pages pages = new Pages("choose", List.of(FRONT, ROOTS, STRUCTURE, APEX));
  private boolean inView;

  /** A panel for a tree on a canvas. */
  public ChoosePanel(Workspace workspace, Canvas canvas, Background background) {
    this.canvas = canvas;
    turning = new Turning(workspace, canvas.facing());
    tool = new TurnTool(workspace, canvas, turning);
    front = new FrontPage(workspace, canvas, background, turning);
    roots = new RootPage(workspace, turning);
    structure = new StructurePage(workspace, canvas, turning);
    apex = new ApexPage(workspace, canvas, background);
    pages.add(FRONT, front.component());
    pages.add(ROOTS, roots.component());
    pages.add(STRUCTURE, structure.component());
    pages.add(APEX, apex.component());
    pages.show(FRONT);
    pages.listen(page -> follow());
    workspace.listen(
        topic -> {
          switch (topic) {
            case UNITS -> follow();
            case DOCUMENT, PLAN, OPENED -> apex.follow();
            default -> {
              // the pages hear of the rest through the tree that is turned
            }
          }
        });
  }

  /** Lets the page that is seen follow the tree, and no other. */
  private void follow() {
    Page page = pages.shown();
    apex.inView(inView && page.equals(APEX));
    stand(inView && !page.equals(APEX));
    front.inView(inView && page.equals(FRONT));
    roots.inView(inView && page.equals(ROOTS));
    structure.inView(inView && page.equals(STRUCTURE));
  }

  /** The tree is turned by hand but on the page that shows it bent. */
  private void stand(boolean on) {
    if (on == turning.isShown()) {
      return;
    }
    if (on) {
      turning.begin();
      canvas.use(tool);
    } else {
      canvas.useNone();
      turning.end();
    }
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
    return front.commands(turning::isShown);
  }

  @Override
  public void shown() {
    canvas.useNone();
    inView = true;
    follow();
  }

  @Override
  public void hidden() {
    inView = false;
    follow();
  }
}
