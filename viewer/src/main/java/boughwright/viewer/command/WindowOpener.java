// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import boughwright.viewer.window.shell.Start;
import java.util.Optional;

/** Opens the window, where there is one to open. */
interface WindowOpener {
  /** There is no display. */
  WindowOpener NONE =
      new WindowOpener() {
        @Override
        public boolean hasDisplay() {
          return false;
        }

        @Override
        public void open(Optional<Start.Given> given) {
          throw new IllegalStateException("there is no display");
        }
      };

  /** The display of this process. */
  WindowOpener OF_PROCESS =
      new WindowOpener() {
        @Override
        public boolean hasDisplay() {
          return Start.hasDisplay();
        }

        @Override
        public void open(Optional<Start.Given> given) throws InputException {
          try {
            Start.window(given);
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
        }
      };

  boolean hasDisplay();

  /**
   * Opens the window and returns when the last one is closed.
   *
   * @param given a tree to open; empty for the one worked on last
   * @throws InputException if there is nothing that can be opened
   */
  void open(Optional<Start.Given> given) throws InputException;
}
