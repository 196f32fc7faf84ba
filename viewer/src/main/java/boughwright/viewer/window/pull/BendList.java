// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.edit.BendEdits;
import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.ProposalEdits;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.problem.VisibleText;
import boughwright.viewer.scene.Wording;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.ListSelectionModel;

/** The bends of the plan: each can be taken up again and deleted. */
final class BendList {
  private final Workspace workspace;
  private final Pulling pulling;
  private final DefaultListModel<String> words = new DefaultListModel<>();
  private final JList<String> list = new JList<>(words);
  private final JButton change = Controls.button("Take hold of it");
  private final JButton delete = Controls.button("Delete it");
  private final List<Entry> entries = new ArrayList<>();
  private final JComponent section;

  /** A line of a proposal, or a proposal without lines. */
  private record Entry(ProposalEdits.Where where, Optional<GuyLine> line, boolean alone) {}

  BendList(Workspace workspace, Pulling pulling) {
    this.workspace = workspace;
    this.pulling = pulling;
    Controls.named(list, "pull.bends", "Bends of the plan");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new Line());
    Controls.named(change, "pull.change", "Take hold of the chosen line");
    Controls.named(delete, "pull.delete", "Delete the chosen bend");
    change.setMnemonic('h');
    delete.setMnemonic('e');
    change.addActionListener(event -> change());
    delete.addActionListener(event -> delete());
    list.addListSelectionListener(event -> enable());
    section = Controls.section("In the plan", list, Controls.row(change, delete));
    workspace.listen(
        topic -> {
          if (topic == Topic.DOCUMENT || topic == Topic.PLAN) {
            follow();
          }
        });
    follow();
  }

  /** A line of the list, as high as a finger needs; a long one is told in full beside it. */
  private static final class Line extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;

    @Override
    public Component getListCellRendererComponent(
        JList<?> in, Object value, int index, boolean picked, boolean focus) {
      super.getListCellRendererComponent(in, value, index, picked, focus);
      setToolTipText(String.valueOf(value));
      return this;
    }

    @Override
    public Dimension getPreferredSize() {
      Dimension size = super.getPreferredSize();
      return new Dimension(size.width, Math.max(size.height, Theme.px(Controls.TARGET)));
    }
  }

  JComponent component() {
    return section;
  }

  private void follow() {
    entries.clear();
    words.clear();
    workspace.plan().ifPresent(plan -> plan.proposals().forEach(one -> add(plan, one)));
    section.setVisible(!entries.isEmpty());
    enable();
  }

  private void add(Plan plan, Proposal proposal) {
    ProposalEdits.Where where = new ProposalEdits.Where(plan.id(), proposal.id());
    boolean alone =
        proposal.guyLines().size() == 1
            && proposal.coils().isEmpty()
            && proposal.handBends().isEmpty()
            && proposal.hungWeights().isEmpty()
            && proposal.aids().isEmpty();
    for (GuyLine line : proposal.guyLines()) {
      entries.add(new Entry(where, Optional.of(line), alone));
      words.addElement(VisibleText.of(proposal.id()) + ", " + PullWords.line(line));
    }
    if (proposal.guyLines().isEmpty()) {
      entries.add(new Entry(where, Optional.empty(), true));
      words.addElement(VisibleText.of(proposal.id()) + ", " + other(proposal));
    }
  }

  private static String other(Proposal proposal) {
    if (!proposal.coils().isEmpty()) {
      return "wire: " + Wording.wire(proposal.coils().get(0));
    }
    return proposal.handBends().isEmpty() ? "no line" : "bent by hand";
  }

  private Optional<Entry> chosen() {
    int at = list.getSelectedIndex();
    return at < 0 || at >= entries.size() ? Optional.empty() : Optional.of(entries.get(at));
  }

  private void enable() {
    change.setEnabled(chosen().flatMap(Entry::line).isPresent());
    delete.setEnabled(chosen().isPresent());
  }

  private void change() {
    chosen()
        .filter(one -> one.line().isPresent())
        .ifPresent(
            one -> {
              pulling.change(new Proposing.Changing(one.where(), one.line().get()));
              pulling.holdAsItIs();
            });
  }

  private void delete() {
    chosen()
        .ifPresent(
            one -> {
              Edit edit =
                  one.alone()
                      ? ProposalEdits.delete(one.where())
                      : BendEdits.deleteLine(one.where(), one.line().orElseThrow().id());
              workspace.edit(edit);
            });
  }
}
