// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.TreeWood;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.HighAsWide;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.work.Workspace;
import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/**
 * The species, found by typing any part of its names. Down and Up go through what was found, Enter
 * takes it, Esc leaves it as it was.
 */
final class SpeciesChooser extends HighAsWide {
  private static final long serialVersionUID = 1L;
  private static final int ROWS = 6;

  private final transient Workspace workspace;
  private final JTextField field = new JTextField(10);
  private final DefaultListModel<Species> found = new DefaultListModel<>();
  private final JList<Species> list = new JList<>(found);
  private final JScrollPane pane = new JScrollPane(list);
  private final Prose values = new Prose("", Shade.QUIET);
  private boolean seeking = true;

  SpeciesChooser(Workspace workspace) {
    super(new MigLayout("wrap 1, fillx, insets 0, gapy 4, hidemode 3", "[grow,fill,0:pref]", ""));
    this.workspace = workspace;
    JLabel label = Controls.note("Species");
    label.setDisplayedMnemonic('S');
    label.setLabelFor(field);
    Controls.named(field, "measure.species", "Species, type any part of its name");
    field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "Type a part of its name");
    field.putClientProperty(
        FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY,
        FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_ALWAYS);
    Controls.named(list, "measure.species.found", "Species found");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setVisibleRowCount(ROWS);
    list.setFocusable(false);
    list.setCellRenderer(new NameCell());
    values.setName("measure.species.values");
    pane.setVisible(false);
    add(label, "wmin 0");
    add(field, "growx, wmin 0, hmin " + Theme.length(Controls.TARGET));
    add(pane, "growx, wmin 0");
    add(values, "growx, wmin 0");
    listen();
    refresh();
  }

  /** A wood as a line of the list. */
  private static final class NameCell extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;

    @Override
    public Component getListCellRendererComponent(
        JList<?> in, Object value, int index, boolean picked, boolean focus) {
      Species species = (Species) value;
      super.getListCellRendererComponent(in, SpeciesNames.of(species), index, picked, focus);
      setToolTipText(SpeciesNames.values(species));
      return this;
    }
  }

  private void listen() {
    field
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent event) {
                seek();
              }

              @Override
              public void removeUpdate(DocumentEvent event) {
                seek();
              }

              @Override
              public void changedUpdate(DocumentEvent event) {
                seek();
              }
            });
    field.addActionListener(event -> take());
    on(KeyEvent.VK_DOWN, () -> step(1));
    on(KeyEvent.VK_UP, () -> step(-1));
    on(KeyEvent.VK_ESCAPE, this::refresh);
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            take();
          }
        });
  }

  private void on(int key, Runnable run) {
    field.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key, 0), "seek" + key);
    field
        .getActionMap()
        .put(
            "seek" + key,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public boolean accept(Object sender) {
                return pane.isVisible() || key == KeyEvent.VK_DOWN;
              }

              @Override
              public void actionPerformed(ActionEvent event) {
                run.run();
              }
            });
  }

  private void seek() {
    if (seeking) {
      show(SpeciesNames.matching(SpeciesTable.bundled(), field.getText()));
    }
  }

  private void show(List<Species> species) {
    found.clear();
    species.forEach(found::addElement);
    if (!species.isEmpty()) {
      list.setSelectedIndex(0);
      values.say(SpeciesNames.values(species.get(0)), Shade.QUIET);
    } else {
      values.say(
          "No wood of the table is called so. Take \u201Cunknown\u201D, and a pull test will"
              + " narrow it.",
          Shade.CAUTION);
    }
    pane.setVisible(!species.isEmpty());
    revalidate();
  }

  private void step(int by) {
    if (!pane.isVisible()) {
      show(SpeciesTable.bundled().all());
      return;
    }
    int next = Math.max(0, Math.min(found.size() - 1, list.getSelectedIndex() + by));
    list.setSelectedIndex(next);
    list.ensureIndexIsVisible(next);
    values.say(SpeciesNames.values(found.get(next)), Shade.QUIET);
  }

  private void take() {
    if (pane.isVisible() && list.getSelectedValue() != null) {
      String key = list.getSelectedValue().key();
      workspace.edit(TreeEdits.wood(new TreeWood.OfSpecies(key)));
    }
    refresh();
  }

  /** Shows the species of the tree as it is. */
  void refresh() {
    seeking = false;
    TreeWood wood = workspace.document().tree().wood();
    if (wood instanceof TreeWood.Own own) {
      field.setText(own.name());
      values.say("Wood of your own, with the modulus that the file gives.", Shade.QUIET);
    } else {
      String key = ((TreeWood.OfSpecies) wood).key();
      Species species = SpeciesTable.bundled().woodFor(key);
      boolean known = SpeciesTable.bundled().find(key).size() == 1;
      field.setText(known ? SpeciesNames.of(species) : key);
      values.say(SpeciesNames.values(species), Shade.QUIET);
    }
    field.setCaretPosition(0);
    pane.setVisible(false);
    seeking = true;
    revalidate();
  }
}
