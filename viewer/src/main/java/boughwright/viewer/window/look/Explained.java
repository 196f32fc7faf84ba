// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.util.Optional;

/** Something that can say what its number is. */
public interface Explained {
  /** What it would say; empty while it has nothing to say. */
  Optional<Explanation> explanation();

  /** Says it, beside itself, until Esc is pressed. */
  void explain();
}
