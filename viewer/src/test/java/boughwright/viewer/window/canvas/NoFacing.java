// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import java.util.Optional;

/** Of a canvas on which the tree stands as it stands. */
public final class NoFacing implements Facing {
  @Override
  public void stand(Optional<Stance> stance) {
    // stands as it stands
  }

  @Override
  public void showWhole() {
    // shows what it shows
  }

  @Override
  public double azimuth() {
    return 0;
  }

  @Override
  public double elevation() {
    return 0;
  }

  @Override
  public void whenTurned(Runnable listener) {
    // is not turned
  }

  @Override
  public Optional<Portraits> portraits() {
    return Optional.empty();
  }
}
