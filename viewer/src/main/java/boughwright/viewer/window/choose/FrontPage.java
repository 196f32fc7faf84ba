// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.problem.VisibleText;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;

/**
 * Front and planting angle: turn and tilt the tree, see what it shows, find, mark, compare, use.
 */
final class FrontPage {
  private static final double STEP = Math.toRadians(1);

  /** Higher than the eye by less than this is not worth a word [rad]. */
  private static final double RAISED = Math.toRadians(2);

  private final Workspace workspace;
  private final Turning turning;
  private final TurnFields fields;
  private final MeasureBars bars = new MeasureBars();
  private final WishFields wishes;
  private final BestFronts best;
  private final MarkedFronts marked;
  private final Prose trouble = Controls.prose("");
  private final JButton use = Controls.button("Use for the plan");
  private final JPanel column = Controls.column();
  private boolean inView;

  FrontPage(Workspace workspace, Canvas canvas, Background background, Turning turning) {
    this.workspace = workspace;
    this.turning = turning;
    fields = new TurnFields(turning, workspace.units());
    wishes = new WishFields(workspace);
    best = new BestFronts(background, turning, canvas.facing());
    marked = new MarkedFronts(workspace, background, turning, canvas.facing());
    column.setName("choose.panel");
    trouble.setName("choose.trouble");
    Controls.named(use, "choose.use", "Use front and planting angle for the plan");
    use.setMnemonic('u');
    use.addActionListener(event -> use());
    column.add(fields.component());
    column.add(trouble, "wmin 0");
    column.add(bars.component(), "gaptop " + Controls.APART);
    column.add(use, "gaptop " + Controls.NEAR);
    for (JComponent part :
        new JComponent[] {best.component(), marked.component(), wishes.component()}) {
      column.add(part, "gaptop " + Controls.APART + ", wmin 0");
    }
    turning.listen(this::follow);
    workspace.listen(this::heard);
    follow();
  }

  JComponent component() {
    return column;
  }

  private void heard(Topic topic) {
    switch (topic) {
      case DOCUMENT, PLAN, OPENED -> {
        wishes.follow();
        fill();
        follow();
      }
      case UNITS -> {
        fields.use(workspace.units());
        wishes.useUnits();
        fill();
        follow();
      }
      default -> {
        // the rest is nothing to a front
      }
    }
  }

  /** Whether it is seen; only then it follows the tree. */
  void inView(boolean on) {
    inView = on;
    fill();
    follow();
  }

  private void fill() {
    if (inView) {
      best.fill();
      marked.fill();
    }
  }

  private void follow() {
    if (!inView) {
      return;
    }
    fields.follow();
    bars.show(turning.score());
    String words = turning.trouble();
    if (words.isEmpty() && Math.abs(turning.raised()) > RAISED) {
      words =
          "You look from "
              + workspace.units().angle(Math.abs(turning.raised()))
              + (turning.raised() > 0 ? " higher" : " lower")
              + " than the eye the front is judged by.";
    }
    trouble.say(words, Shade.CAUTION);
    trouble.setVisible(!words.isEmpty());
    use.setText(
        workspace.plan().isPresent()
            ? "Use for plan " + VisibleText.of(workspace.plan().get().id())
            : "Use for a new plan");
    use.setToolTipText(use.getText());
    use.setEnabled(!isUsed());
  }

  private boolean isUsed() {
    return workspace
        .plan()
        .filter(
            plan ->
                plan.frontAzimuth().isPresent()
                    && plan.frontAzimuth().getAsDouble() == turning.pose().azimuth()
                    && plan.planting().equals(turning.planting()))
        .isPresent();
  }

  private void use() {
    String id =
        workspace.plan().map(Plan::id).orElseGet(() -> PlanEdits.nextId(workspace.document()));
    Edit stand = PlanEdits.standing(id, turning.pose().azimuth(), turning.planting());
    if (workspace.plan().isPresent()) {
      workspace.edit(stand);
    } else {
      Edit add = PlanEdits.add(new PlanDraft(id).build());
      workspace.edit(
          new Edit("Use the front for plan " + id, document -> stand.of(add.of(document))));
    }
  }

  List<Command> commands(BooleanSupplier chosen) {
    return List.of(
        tilt(
            new Name("choose.tilt-left", "Tilt left", 'l'),
            new Step(KeyEvent.VK_LEFT, -STEP, 0),
            chosen),
        tilt(
            new Name("choose.tilt-to-right", "Tilt right", 'r'),
            new Step(KeyEvent.VK_RIGHT, STEP, 0),
            chosen),
        tilt(
            new Name("choose.tilt-away", "Tilt away", 'a'),
            new Step(KeyEvent.VK_UP, 0, -STEP),
            chosen),
        tilt(
            new Name("choose.tilt-near", "Tilt toward you", 'y'),
            new Step(KeyEvent.VK_DOWN, 0, STEP),
            chosen),
        new Command(
            "choose.mark",
            "Mark this front",
            'k',
            Optional.empty(),
            "Keeps the front that is seen in the tree file, to come back to",
            marked::mark,
            chosen),
        new Command(
            "choose.use",
            "Use this front for the plan",
            'u',
            Optional.empty(),
            "Sets front and planting angle of the plan",
            this::use,
            chosen));
  }

  /** What a command is called. */
  private record Name(String id, String words, char letter) {}

  /** A step of tilting by key. */
  private record Step(int key, double right, double toward) {
    KeyStroke stroke() {
      return Keys.alt(key);
    }
  }

  private Command tilt(Name name, Step step, BooleanSupplier chosen) {
    return new Command(
        name.id(),
        name.words(),
        name.letter(),
        Optional.of(step.stroke()),
        "Tilts the tree by one degree while its front is chosen",
        () ->
            turning.tiltTo(
                turning.pose().tiltRight() + step.right(),
                turning.pose().tiltToward() + step.toward()),
        chosen);
  }
}
