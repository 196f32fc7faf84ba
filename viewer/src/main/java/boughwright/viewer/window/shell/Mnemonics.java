// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import java.awt.Component;
import java.awt.Container;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JMenuBar;

/**
 * Sees to it that Alt with a letter means one thing in a window: menus and tabs come first, then
 * the controls in their order. Who finds no free letter goes without and is reached by Tab.
 */
final class Mnemonics {
  private final Set<Character> taken = new HashSet<>();

  Mnemonics(JMenuBar bar, Container... first) {
    for (int i = 0; i < bar.getMenuCount(); i++) {
      taken.add((char) bar.getMenu(i).getMnemonic());
    }
    for (Container part : first) {
      settle(part, taken);
    }
  }

  /** Settles the letters of what is on the screen together with menus and tabs. */
  void settle(Container part) {
    settle(part, new HashSet<>(taken));
  }

  private static void settle(Container part, Set<Character> letters) {
    for (Component child : part.getComponents()) {
      if (child instanceof AbstractButton button) {
        button.setMnemonic(free(button.getMnemonic(), button.getText(), letters));
      } else if (child instanceof JLabel label && label.getLabelFor() != null) {
        label.setDisplayedMnemonic(free(label.getDisplayedMnemonic(), label.getText(), letters));
      } else if (child instanceof Container inner) {
        settle(inner, letters);
      }
    }
  }

  /** The wished letter, or another of the words; 0 if nobody wished one or all are taken. */
  private static int free(int wished, String words, Set<Character> letters) {
    if (wished == 0 || letters.add((char) wished)) {
      return wished;
    }
    for (char letter : words == null ? new char[0] : words.toUpperCase(Locale.ROOT).toCharArray()) {
      if (letter >= 'A' && letter <= 'Z' && letters.add(letter)) {
        return letter;
      }
    }
    return 0;
  }
}
