// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Camera;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;

/**
 * The tree as it is seen, for those who draw on it and pull at it. Belongs to the event thread.
 * Points are in the tree frame as measured, whatever the planting angle; pixels are user pixels
 * from the upper left of the component.
 */
public interface Canvas {
  JComponent component();

  /** The wood under a pixel. */
  Optional<Hit> hit(double x, double y);

  /** The line of sight through a pixel. */
  Ray ray(double x, double y);

  /** Where a point appears. */
  Camera.Pixel project(Point3 point);

  /** The point under a pixel on the plane square to the line of sight through another point. */
  Point3 beside(Point3 through, double x, double y);

  /** The azimuth the viewer stands at, and how far above level, as measured [rad]. */
  double azimuth();

  double elevation();

  /**
   * Looks level and without perspective, as photos are traced, at the whole tree.
   *
   * @param azimuth where the viewer stands [rad]
   * @param also points that are to be in view as well, such as the corners of a photo
   */
  void lookFlatFrom(double azimuth, List<Point3> also);

  /** Whether a segment is drawn: it is not hidden. */
  boolean isShown(String segment);

  /** Looks at the whole tree again if one of some points is not in view. */
  void reveal(List<Point3> points);

  /** Gives the main mouse button to a tool, after telling the one before. */
  void use(CanvasTool tool);

  /** Gives the main mouse button back to turning and picking. */
  void useNone();

  /** Shows another pose than that of the plan, until it changes; empty for that again. */
  void preview(Optional<Preview> preview);

  /**
   * Shows the tree as measured whatever the plan: upright, uncut, not bent. Places on it then mean
   * that tree. With {@code false} it is again as its plan has it, in the pose it was left in.
   */
  void measured(boolean on);

  /** How the tree stands before the viewer. */
  Facing facing();

  void add(CanvasLayer layer, CanvasLayer.Place place);

  /** Draws a frame soon; many calls make one frame. */
  void redraw();
}
