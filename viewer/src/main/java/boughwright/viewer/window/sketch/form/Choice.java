// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Theme;
import java.awt.Component;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** One of a few things, under its name. */
final class Choice<T> extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JComboBox<T> box = new JComboBox<>();
  private final transient Consumer<T> chosen;
  private boolean telling = true;

  /**
   * @param name name for tests
   * @param words what a person calls it
   * @param spoken the words for each thing
   * @param chosen told what a person chose
   */
  Choice(String name, String words, Function<T, String> spoken, Consumer<T> chosen) {
    super(new MigLayout("wrap 1, fillx, insets 0, gapy 4", "[grow,fill,0:pref]", ""));
    this.chosen = chosen;
    setOpaque(false);
    JLabel label = Controls.note(words);
    label.setLabelFor(box);
    Controls.named(box, name, words);
    box.setRenderer(new Spoken<>(spoken));
    box.addActionListener(event -> tell());
    add(label, "wmin 0");
    add(box, "growx, wmin 0, hmin " + Theme.length(Controls.TARGET));
  }

  /** Speaks the things of a list. */
  private static final class Spoken<T> extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;
    private final transient Function<T, String> spoken;

    Spoken(Function<T, String> spoken) {
      this.spoken = spoken;
    }

    @Override
    @SuppressWarnings("unchecked")
    public Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean picked, boolean focus) {
      String words = value == null ? " " : spoken.apply((T) value);
      return super.getListCellRendererComponent(list, words, index, picked, focus);
    }
  }

  private void tell() {
    T value = value();
    if (telling && value != null) {
      chosen.accept(value);
    }
  }

  /** Offers these things, and shows one of them without telling. */
  void offer(Iterable<T> things, T shown) {
    telling = false;
    DefaultComboBoxModel<T> model = new DefaultComboBoxModel<>();
    things.forEach(model::addElement);
    model.setSelectedItem(shown);
    box.setModel(model);
    telling = true;
  }

  /** Shows one of the things without telling. */
  void setValue(T value) {
    telling = false;
    box.setSelectedItem(value);
    telling = true;
  }

  T value() {
    return box.getItemAt(box.getSelectedIndex());
  }

  JComboBox<T> box() {
    return box;
  }
}
