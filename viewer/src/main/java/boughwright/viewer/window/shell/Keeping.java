// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Workspace;
import java.nio.file.Path;

/** Keeps what is not saved yet, so that a stopped process loses nothing. */
final class Keeping {
  Keeping(Path folder, Workspace workspace, Background background) {}

  void forget() {}

  static void offer(Desk desk, MainWindow window) {}
}
