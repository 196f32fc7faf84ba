// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.TreeWood;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Theme;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** Asks what a new tree is called and what wood it is. */
final class NewTreeSheet {
  private static final int WIDTH = 520;

  private final MainWindow window;
  private final Sheet sheet;
  private final JTextField name = new JTextField("My tree");
  private final JComboBox<Wood> species = new JComboBox<>();

  /** A wood as it stands in the list. */
  private record Wood(String key, String words) {
    @Override
    public String toString() {
      return words;
    }
  }

  NewTreeSheet(MainWindow window) {
    this.window = window;
    sheet = new Sheet(window, "new-tree", "New tree", true);
  }

  void show() {
    SpeciesTable.bundled().all().stream()
        .map(NewTreeSheet::wood)
        .sorted(Comparator.comparing(Wood::words))
        .forEach(species::addItem);
    likely().ifPresent(species::setSelectedItem);
    Controls.named(name, "new-tree.name", "What you call it");
    Controls.named(species, "new-tree.species", "Species");
    sheet.add(labelled("What you call it", 'W', name));
    sheet.add(labelled("Species", 'S', species));
    sheet.add(
        Controls.prose(
            "It starts with one trunk segment. Measure it and add the others in Measure."));
    JButton make = Controls.button("Start");
    make.setName("new-tree.start");
    make.setMnemonic('T');
    make.addActionListener(event -> make());
    sheet.buttons(java.util.List.of(make, sheet.closing("Cancel", 'C')));
    name.selectAll();
    sheet.show(WIDTH, 0);
  }

  /** The wood of the tree that is open, which the next one often is too. */
  private Optional<Wood> likely() {
    String now =
        window.workspace().document().tree().wood() instanceof TreeWood.OfSpecies listed
            ? listed.key()
            : "";
    return IntStream.range(0, species.getItemCount())
        .mapToObj(species::getItemAt)
        .filter(wood -> wood.key().equals(now))
        .findFirst();
  }

  private static Wood wood(Species one) {
    String common = one.commonNames().isEmpty() ? "" : one.commonNames().get(0) + ", ";
    return new Wood(one.key(), common + one.botanicalName());
  }

  private static JPanel labelled(String words, char mnemonic, javax.swing.JComponent field) {
    JLabel label = Controls.note(words);
    label.setLabelFor(field);
    label.setDisplayedMnemonic(mnemonic);
    JPanel panel =
        new JPanel(
            new net.miginfocom.swing.MigLayout(
                "wrap 1, fillx, insets 0, gapy 4", "[grow,fill,0:pref]", ""));
    panel.setOpaque(false);
    panel.add(label);
    panel.add(field, "wmin 0, hmin " + Theme.length(Controls.TARGET));
    return panel;
  }

  private void make() {
    String called = name.getText().strip();
    String wood = ((Wood) species.getSelectedItem()).key();
    if (window.files().open("A new tree", () -> Opened.fresh(called, wood))) {
      sheet.close();
      window.choose(Math.min(1, window.parts().panels().size() - 1));
    }
  }
}
