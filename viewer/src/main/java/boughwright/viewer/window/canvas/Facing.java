// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import java.util.Optional;

/** How the tree on a canvas stands before the viewer. Belongs to the event thread. */
public interface Facing {
  /**
   * Shows the tree as the cuts of its plan leave it, not bent, standing before the viewer in some
   * way; empty for as its plan has it, in the pose it was left in.
   */
  void stand(Optional<Stance> stance);

  /** Looks at the whole tree from where the viewer is. */
  void showWhole();

  /** Where the viewer stands round the tree as it is shown, as a plan counts its front [rad]. */
  double azimuth();

  /** How far above level the viewer looks from [rad]. */
  double elevation();

  /** Asks to be told when the viewer has gone elsewhere round the tree. */
  void whenTurned(Runnable listener);

  /** Draws small pictures of the tree as it is now; empty where nothing is drawn. */
  Optional<Portraits> portraits();
}
