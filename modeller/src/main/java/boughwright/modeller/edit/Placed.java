// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.problem.InputException;
import java.util.List;

/**
 * A sort of things that go by their place in a list, from 0; for people from 1.
 *
 * @param what what one is called
 */
record Placed(String what) {
  /** Puts another thing in the place of one. */
  <T> void replace(List<T> all, int at, T other) throws InputException {
    requireIn(all, at);
    all.set(at, other);
  }

  void remove(List<?> all, int at) throws InputException {
    requireIn(all, at);
    all.remove(at);
  }

  private void requireIn(List<?> all, int at) throws InputException {
    if (at < 0 || at >= all.size()) {
      throw Refusal.of(
          what,
          "unknown-" + what.replace(' ', '-'),
          "there is no " + what + " number " + (at + 1),
          "Choose one that is there");
    }
  }
}
