// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Theme;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;

/** A list of named things, one of which is picked; it stays picked when the list changes. */
public final class PickList<T> extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int MOST_ROWS = 6;

  private final DefaultListModel<T> things = new DefaultListModel<>();
  private final JList<T> list = new JList<>(things);
  private final transient Function<T, String> naming;
  private final transient Consumer<Optional<T>> picked;
  private String kept = "";
  private boolean telling = true;

  /**
   * @param name name for tests
   * @param spoken what a person calls the list
   * @param naming the name of a thing
   * @param words the line of a thing
   * @param picked told what is picked
   */
  public PickList(
      String name,
      String spoken,
      Function<T, String> naming,
      Function<T, String> words,
      Consumer<Optional<T>> picked) {
    super(new BorderLayout());
    this.naming = naming;
    this.picked = picked;
    setOpaque(false);
    Controls.named(list, name, spoken);
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(
        new DefaultListCellRenderer() {
          private static final long serialVersionUID = 1L;

          @Override
          @SuppressWarnings("unchecked")
          public Component getListCellRendererComponent(
              JList<?> in, Object value, int index, boolean chosen, boolean focus) {
            String line = words.apply((T) value);
            super.getListCellRendererComponent(in, line, index, chosen, focus);
            setToolTipText(line);
            return this;
          }

          @Override
          public Dimension getPreferredSize() {
            Dimension size = super.getPreferredSize();
            return new Dimension(size.width, Math.max(size.height, Theme.px(Controls.TARGET)));
          }
        });
    list.addListSelectionListener(
        event -> {
          if (telling && !event.getValueIsAdjusting()) {
            kept = picked().map(naming).orElse("");
            picked.accept(picked());
          }
        });
    add(new JScrollPane(list), BorderLayout.CENTER);
  }

  /** Keeps the thing of this name picked from now on. */
  public void keep(String name) {
    kept = name;
  }

  /** Shows these things. */
  public void offer(List<T> all) {
    telling = false;
    things.clear();
    int at = all.isEmpty() ? -1 : 0;
    for (T thing : all) {
      if (naming.apply(thing).equals(kept)) {
        at = things.size();
      }
      things.addElement(thing);
    }
    list.setVisibleRowCount(Math.min(MOST_ROWS, Math.max(1, all.size())));
    setVisible(!all.isEmpty());
    if (at >= 0) {
      list.setSelectedIndex(at);
      list.ensureIndexIsVisible(at);
      kept = naming.apply(all.get(at));
    }
    telling = true;
    picked.accept(picked());
    revalidate();
  }

  public Optional<T> picked() {
    return Optional.ofNullable(list.getSelectedValue());
  }

  /** Its place in the list, or -1. */
  public int pickedAt() {
    return list.getSelectedIndex();
  }
}
