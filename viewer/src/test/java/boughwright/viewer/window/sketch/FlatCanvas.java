// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasLayer;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.canvas.Facing;
import boughwright.viewer.window.canvas.Hit;
import boughwright.viewer.window.canvas.NoFacing;
import boughwright.viewer.window.canvas.Preview;
import boughwright.viewer.window.canvas.Ray;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;

/**
 * A level, flat view in plain numbers: 2 pixels to a millimetre, the trunk base at (400, 500). It
 * shares no code with the canvas of the program.
 */
public final class FlatCanvas implements Canvas {
  public static final double SCALE = 2000;
  public static final double BASE_X = 400;
  public static final double BASE_Y = 500;

  private final JPanel component = new JPanel();
  private double azimuth;
  private boolean perspective;

  /** Segments that are hidden. */
  public Set<String> hidden = Set.of();

  /** What the next press hits beside nodes. */
  public Optional<Hit> hit = Optional.empty();

  public FlatCanvas(double azimuth) {
    this.azimuth = azimuth;
    component.setSize(800, 600);
  }

  /** Lets lines of sight spread from now on, as a view with perspective does. */
  public void spread() {
    perspective = true;
  }

  @Override
  public JComponent component() {
    return component;
  }

  @Override
  public Optional<Hit> hit(double x, double y) {
    return hit;
  }

  @Override
  public Ray ray(double x, double y) {
    double turn = perspective ? (x - BASE_X) / 4000 : 0;
    return new Ray(
        new Point3(0, 0, 0), Direction3.of(Math.sin(azimuth + turn), Math.cos(azimuth + turn), 0));
  }

  @Override
  public Camera.Pixel project(Point3 point) {
    double right = point.x() * Math.cos(azimuth) - point.y() * Math.sin(azimuth);
    return new Camera.Pixel(BASE_X + SCALE * right, BASE_Y - SCALE * point.z());
  }

  @Override
  public Point3 beside(Point3 through, double x, double y) {
    double right = (x - BASE_X) / SCALE;
    double up = (BASE_Y - y) / SCALE;
    double depth = through.x() * Math.sin(azimuth) + through.y() * Math.cos(azimuth);
    return new Point3(
        right * Math.cos(azimuth) + depth * Math.sin(azimuth),
        -right * Math.sin(azimuth) + depth * Math.cos(azimuth),
        up);
  }

  @Override
  public Facing facing() {
    return new NoFacing();
  }

  @Override
  public double azimuth() {
    return azimuth;
  }

  @Override
  public double elevation() {
    return 0;
  }

  @Override
  public void lookFlatFrom(double other, List<Point3> also) {
    azimuth = other;
    perspective = false;
  }

  @Override
  public boolean isShown(String segment) {
    return !hidden.contains(segment);
  }

  @Override
  public void reveal(List<Point3> points) {}

  @Override
  public void use(CanvasTool tool) {}

  @Override
  public void useNone() {}

  @Override
  public void preview(Optional<Preview> preview) {}

  @Override
  public void add(CanvasLayer layer, CanvasLayer.Place place) {}

  @Override
  public void measured(boolean on) {}

  @Override
  public void redraw() {}
}
