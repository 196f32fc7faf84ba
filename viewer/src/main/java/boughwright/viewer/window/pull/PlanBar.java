// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.problem.VisibleText;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;

/** Chooses, makes, copies, renames and deletes plans. */
final class PlanBar {
  private final Workspace workspace;
  private final JComboBox<String> choice = Controls.choice();
  private final JTextField name = Controls.high(new JTextField(8));
  private final JButton rename = Controls.button("Rename");
  private final JButton copy = Controls.button("Duplicate");
  private final JButton delete = Controls.button("Delete");
  private final JComponent section;
  private final JComponent more;
  private boolean following;

  PlanBar(Workspace workspace) {
    this.workspace = workspace;
    Controls.named(choice, "plan.choice", "Plan that is worked on");
    Controls.named(name, "plan.name", "Name of the plan");
    JButton add = button(Controls.button("New plan"), "plan.new", 'n', this::add);
    button(rename, "plan.rename", 'r', this::rename);
    button(copy, "plan.duplicate", 'u', this::duplicate);
    button(delete, "plan.delete", 'l', this::delete);
    choice.addActionListener(event -> choose());
    name.addActionListener(event -> rename());
    section = Controls.section("Plan", Controls.row(choice, add));
    more = Controls.section("This plan", Controls.row(name, rename), Controls.row(copy, delete));
    workspace.listen(
        topic -> {
          if (topic == Topic.DOCUMENT || topic == Topic.PLAN) {
            follow();
          }
        });
    follow();
  }

  private static JButton button(JButton button, String name, char mnemonic, Runnable run) {
    Controls.named(button, name, button.getText());
    button.setMnemonic(mnemonic);
    button.addActionListener(event -> run.run());
    return button;
  }

  JComponent component() {
    return section;
  }

  /** What is done with the plan more seldom. */
  JComponent more() {
    return more;
  }

  List<Command> commands() {
    BooleanSupplier some = () -> workspace.plan().isPresent();
    return List.of(
        command("plan.new", "New plan", "Adds an empty plan and works on it.", this::add),
        new Command(
            "plan.duplicate",
            "Duplicate plan",
            'u',
            Optional.empty(),
            "Adds a copy of this plan and works on it.",
            this::duplicate,
            some),
        new Command(
            "plan.delete",
            "Delete plan",
            'l',
            Optional.empty(),
            "Takes this plan out of the document.",
            this::delete,
            some));
  }

  private static Command command(String id, String words, String tip, Runnable run) {
    return new Command(id, words, 'n', Optional.empty(), tip, run, () -> true);
  }

  private void follow() {
    following = true;
    choice.removeAllItems();
    workspace.document().plans().forEach(plan -> choice.addItem(VisibleText.of(plan.id())));
    Optional<Plan> plan = workspace.plan();
    choice.setSelectedIndex(plan.map(one -> workspace.document().plans().indexOf(one)).orElse(-1));
    name.setText(plan.map(Plan::id).orElse(""));
    for (JComponent part : new JComponent[] {choice, name, rename, copy, delete}) {
      part.setEnabled(plan.isPresent());
    }
    following = false;
  }

  private void choose() {
    int chosen = choice.getSelectedIndex();
    if (!following && chosen >= 0) {
      workspace.choosePlan(workspace.document().plans().get(chosen).id());
    }
  }

  private void add() {
    String id = PlanEdits.nextId(workspace.document());
    if (workspace.edit(PlanEdits.add(new PlanDraft(id).build()))) {
      workspace.choosePlan(id);
    }
  }

  private void duplicate() {
    String id = PlanEdits.nextId(workspace.document());
    workspace
        .plan()
        .ifPresent(
            plan -> {
              if (workspace.edit(PlanEdits.duplicate(plan.id(), id))) {
                workspace.choosePlan(id);
              }
            });
  }

  private void rename() {
    String id = name.getText().strip();
    workspace
        .plan()
        .filter(plan -> !plan.id().equals(id))
        .ifPresent(
            plan -> {
              if (workspace.edit(PlanEdits.rename(plan.id(), id))) {
                workspace.choosePlan(id);
              }
            });
  }

  private void delete() {
    workspace.plan().ifPresent(plan -> workspace.edit(PlanEdits.delete(plan.id())));
  }
}
