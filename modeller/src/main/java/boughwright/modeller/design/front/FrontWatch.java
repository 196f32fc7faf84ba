// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

/** Hears how far a search has come, and may stop it; called by any thread. */
public interface FrontWatch {
  /** Nobody watches. */
  FrontWatch NOBODY =
      new FrontWatch() {
        @Override
        public void part(double done) {}

        @Override
        public boolean isStopped() {
          return false;
        }
      };

  /** How much is done, 0 to 1 [1]. */
  void part(double done);

  /** Whether the answer is no longer wanted. */
  boolean isStopped();
}
