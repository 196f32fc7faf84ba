// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.scene.Camera;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What is painted behind and over the wood, by the canvas itself and by others. */
final class Layers implements CanvasPaper.Layers {
  private final Overlay overlay;
  private final Viewpoint viewpoint;
  private final Map<CanvasLayer.Place, List<CanvasLayer>> layers =
      new EnumMap<>(CanvasLayer.Place.class);

  Layers(Overlay overlay, Viewpoint viewpoint) {
    this.overlay = overlay;
    this.viewpoint = viewpoint;
    for (CanvasLayer.Place place : CanvasLayer.Place.values()) {
      layers.put(place, new ArrayList<>());
    }
  }

  void add(CanvasLayer layer, CanvasLayer.Place place) {
    layers.get(place).add(layer);
  }

  private void paint(Graphics2D pen, CanvasLayer.Place place) {
    for (CanvasLayer layer : layers.get(place)) {
      Graphics2D own = (Graphics2D) pen.create();
      layer.paint(own);
      own.dispose();
    }
  }

  void paintBehind(Graphics2D pen) {
    behind(pen, viewpoint.camera(), true);
  }

  /** Paints over the wood in the window, with what only a person at the window sees. */
  void paintOver(Graphics2D pen, Handling handling) {
    Camera camera = viewpoint.camera();
    overlay.paintOver(pen, camera);
    overlay.paintHovered(
        pen, camera, new Rectangle2D.Double(0, 0, camera.width(), camera.height()));
    handling.paint(pen);
    paint(pen, CanvasLayer.Place.OVER);
  }

  @Override
  public void behind(Graphics2D pen, Camera camera, boolean others) {
    overlay.paintBehind(pen, camera);
    if (others) {
      paint(pen, CanvasLayer.Place.BEHIND);
    }
  }

  @Override
  public void over(Graphics2D pen, Camera camera, boolean others) {
    if (others) {
      overlay.paintOver(pen, camera);
      paint(pen, CanvasLayer.Place.OVER);
    }
  }
}
