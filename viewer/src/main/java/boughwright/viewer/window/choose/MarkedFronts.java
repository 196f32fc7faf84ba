// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.edit.FrontEdits;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.problem.VisibleText;
import boughwright.viewer.window.canvas.Facing;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Workspace;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** The fronts a person marked: with a note, a way back, and a choice of those to compare. */
final class MarkedFronts {
  private final Workspace workspace;
  private final Turning turning;
  private final FrontPictures pictures;
  private final FrontComparison comparison;
  private final JButton mark = Controls.button("Mark this front");
  private final Prose note = Controls.prose("");
  private final JPanel list = Controls.stack();
  private final JComponent section;
  private final List<FrontCard> cards = new ArrayList<>();
  private final List<JCheckBox> boxes = new ArrayList<>();
  private List<String> compared = List.of();

  MarkedFronts(Workspace workspace, Background background, Turning turning, Facing facing) {
    this.workspace = workspace;
    this.turning = turning;
    pictures = new FrontPictures(background, facing, turning, this::showPictures);
    comparison = new FrontComparison(turning);
    Controls.named(mark, "choose.mark", "Mark this front to come back to");
    mark.setMnemonic('k');
    mark.addActionListener(event -> mark());
    note.setName("choose.marked-note");
    list.setName("choose.marked");
    section = Controls.section("Marked fronts", mark, note, list, comparison.component());
  }

  JComponent component() {
    return section;
  }

  void mark() {
    workspace.edit(
        FrontEdits.mark(
            new MarkedFront(
                FrontEdits.nextId(workspace.document()),
                turning.pose().azimuth(),
                turning.planting(),
                Optional.empty(),
                Map.of())));
  }

  private List<MarkedFront> marked() {
    return workspace.document().fronts().marked();
  }

  /** Shows what is marked now. */
  void fill() {
    List<MarkedFront> fronts = marked();
    List<String> still = new ArrayList<>(compared);
    still.retainAll(fronts.stream().map(MarkedFront::id).toList());
    compared = List.copyOf(still);
    pictures.want(fronts.stream().map(Turning::pose).toList());
    note.say(
        fronts.isEmpty() ? "None is marked yet. Marked fronts are kept in the tree file." : "",
        Shade.QUIET);
    note.setVisible(fronts.isEmpty());
    list.removeAll();
    cards.clear();
    boxes.clear();
    for (MarkedFront front : fronts) {
      FrontCard card = card(front);
      cards.add(card);
      list.add(card.component(), "wmin 0, growx, gapbottom " + Controls.NEAR);
    }
    showPictures();
    list.revalidate();
    list.repaint();
  }

  private void showPictures() {
    for (int n = 0; n < cards.size(); n++) {
      cards.get(n).show(pictures.of(n));
    }
    compare();
  }

  private void compare() {
    List<FrontComparison.Column> columns = new ArrayList<>();
    List<MarkedFront> fronts = marked();
    for (int n = 0; n < fronts.size(); n++) {
      if (compared.contains(fronts.get(n).id())) {
        columns.add(new FrontComparison.Column(fronts.get(n), pictures.of(n)));
      }
    }
    comparison.show(columns);
  }

  private FrontCard card(MarkedFront front) {
    String id = front.id();
    String shown = VisibleText.of(id);
    FrontCard card =
        new FrontCard(
            "choose.go-" + id,
            "Go to " + shown,
            MeasureWords.sentence(Turning.pose(front)),
            () -> turning.to(Turning.pose(front)));
    card.add(note(front));
    JCheckBox box = Controls.large(new JCheckBox("Compare"));
    Controls.named(box, "choose.compare-" + id, "Compare front " + shown);
    box.setOpaque(false);
    box.setSelected(compared.contains(id));
    box.setEnabled(box.isSelected() || compared.size() < FrontComparison.MOST);
    box.addActionListener(event -> toggle(id, box.isSelected()));
    JButton remove = Controls.button("Remove");
    Controls.named(remove, "choose.remove-" + id, "Remove the mark of front " + shown);
    remove.addActionListener(event -> workspace.edit(FrontEdits.remove(id)));
    boxes.add(box);
    card.add(Controls.row(box, remove));
    return card;
  }

  private JTextField note(MarkedFront front) {
    JTextField field = Controls.high(new JTextField(front.note().orElse(""), 8));
    Controls.named(field, "choose.note-" + front.id(), "Note to front " + front.id());
    field.putClientProperty("JTextField.placeholderText", "note");
    field.setToolTipText(front.note().map(VisibleText::of).orElse(null));
    Runnable commit =
        () -> {
          String words = field.getText().strip();
          boolean changed = !words.equals(front.note().orElse(""));
          boolean there = workspace.document().fronts().marked(front.id()).isPresent();
          if (changed && there) {
            workspace.edit(FrontEdits.note(front.id(), words));
          }
        };
    field.addActionListener(event -> commit.run());
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent event) {
            if (!event.isTemporary() && field.isShowing()) {
              commit.run();
            }
          }
        });
    return field;
  }

  private void toggle(String id, boolean on) {
    List<String> next = new ArrayList<>(compared);
    next.remove(id);
    if (on) {
      next.add(id);
    }
    compared = List.copyOf(next);
    boxes.forEach(
        box -> box.setEnabled(box.isSelected() || compared.size() < FrontComparison.MOST));
    compare();
  }
}
