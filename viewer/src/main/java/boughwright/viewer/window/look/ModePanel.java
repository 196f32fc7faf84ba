// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.util.List;
import javax.swing.JComponent;

/** The controls beside the tree for one sort of work; one is shown at a time. */
public interface ModePanel {
  /** The word on its tab. */
  String name();

  /** The letter of the name that is underlined. */
  char mnemonic();

  /** The controls; the same component every time. */
  JComponent component();

  /** What can be done by menu and key, whether the panel is shown or not. */
  List<Command> commands();

  /** Told when it comes into view. */
  void shown();

  /** Told when another takes its place. */
  void hidden();
}
