// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.sketch.entry.Shown;
import java.util.Optional;

/**
 * How the tree is looked at, as far as it matters to photos.
 *
 * @param azimuth where the viewer stands [rad]
 * @param elevation how far above level [rad]
 * @param flat whether lines of sight are parallel
 */
public record Stance(double azimuth, double elevation, boolean flat) {
  /** A photo lines up with the view within this [rad]. */
  private static final double NEAR = Math.toRadians(3);

  private static final double PARALLEL = 1e-6;

  /** How a canvas looks at the tree now. */
  public static Stance of(Canvas canvas) {
    int width = Math.max(2, canvas.component().getWidth());
    int height = Math.max(2, canvas.component().getHeight());
    double turn = canvas.ray(0, 0).along().angleTo(canvas.ray(width, height).along());
    return new Stance(canvas.azimuth(), canvas.elevation(), turn < PARALLEL);
  }

  /** Why a photo cannot stand behind this view; empty if it can. */
  public Optional<String> reasonAgainst(Backdrop backdrop) {
    double aside = Math.abs(Math.IEEEremainder(azimuth - backdrop.seenFrom(), 2 * Math.PI));
    String taken = Shown.azimuth(backdrop.seenFrom()) + "\u00B0";
    if (aside > NEAR) {
      return Optional.of(
          "Hidden: it was taken from "
              + taken
              + ", you look from "
              + Shown.azimuth(azimuth)
              + "\u00B0.");
    }
    if (Math.abs(elevation) > NEAR) {
      return Optional.of("Hidden: it was taken level, you look from above or below.");
    }
    return flat
        ? Optional.empty()
        : Optional.of("Hidden: with perspective it would not line up. Use the flat view.");
  }
}
