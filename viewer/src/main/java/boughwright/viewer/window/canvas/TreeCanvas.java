// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.gl.LiveRenderer;
import boughwright.viewer.gl.NoGraphicsException;
import boughwright.viewer.gl.Quality;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.awt.BorderLayout;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The tree of a workspace on the screen. Belongs to the event thread. */
public final class TreeCanvas implements Canvas, AutoCloseable {
  private final Workspace work;
  private final Showing showing;
  private final Viewpoint viewpoint = new Viewpoint(this::viewChanged);
  private final Pointing pointing;
  private final Pictures pictures;
  private final CanvasView view;
  private final JPanel whole = new JPanel(new BorderLayout());
  private final Overlay overlay;
  private final Map<CanvasLayer.Place, List<CanvasLayer>> layers =
      new EnumMap<>(CanvasLayer.Place.class);
  private Optional<CanvasTool> tool = Optional.empty();
  private boolean framed;

  /** A canvas on a workspace, which it listens to as long as that lives. */
  public TreeCanvas(Workspace work) {
    this.work = work;
    for (CanvasLayer.Place place : CanvasLayer.Place.values()) {
      layers.put(place, new ArrayList<>());
    }
    showing = new Showing(work);
    pointing = new Pointing(showing, viewpoint);
    overlay = new Overlay(work, showing);
    view = new CanvasView(this::paintBehind, this::paintOver, overlay::words);
    pictures = new Pictures(this::wanted, this::take, this::cannotDraw);
    CanvasMouse mouse = new CanvasMouse(new Hands(), viewpoint);
    view.addMouseListener(mouse);
    view.addMouseMotionListener(mouse);
    view.addMouseWheelListener(mouse);
    view.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            resized();
          }
        });
    whole.setName("canvas");
    whole.add(view);
    showing.listen(this::shownChanged);
    work.listen(this::heard);
  }

  private void heard(Topic topic) {
    if (topic == Topic.SELECTION) {
      view.repaint();
    }
  }

  private void shownChanged() {
    overlay.forgetHovered();
    viewpoint.seeAllOf(showing.capsules().bounds());
    pictures.ask();
    view.repaint();
  }

  private void viewChanged() {
    pictures.ask();
  }

  private void resized() {
    if (view.getWidth() < 1 || view.getHeight() < 1) {
      return;
    }
    viewpoint.resize(view.getWidth(), view.getHeight());
    if (!framed) {
      framed = true;
      viewpoint.seeAllOf(showing.capsules().bounds());
      viewpoint.setAt(ViewAngle.level(front()), overlay.everything());
    }
  }

  /** The azimuth of the plan's front [rad]. */
  double front() {
    return work.plan().map(p -> p.frontAzimuth().orElse(0)).orElse(0.0);
  }

  private LiveRenderer.Request wanted(Quality quality) {
    double scale = view.deviceScale();
    return new LiveRenderer.Request(
        showing.shown(quality == Quality.STILL), viewpoint.camera().finer(scale), scale, quality);
  }

  private void take(LivePicture picture) {
    view.show(picture);
  }

  private void cannotDraw(NoGraphicsException e) {
    overlay.setTrouble(e.getMessage());
    view.repaint();
  }

  private void paintBehind(Graphics2D pen) {
    overlay.paintBehind(pen, shownCamera());
    paint(pen, CanvasLayer.Place.BEHIND);
  }

  private void paintOver(Graphics2D pen) {
    Rectangle2D room = new Rectangle2D.Double(0, 0, view.getWidth(), view.getHeight());
    overlay.paintOver(pen, shownCamera(), room);
    tool.ifPresent(t -> t.paint(pen));
    paint(pen, CanvasLayer.Place.OVER);
  }

  private void paint(Graphics2D pen, CanvasLayer.Place place) {
    for (CanvasLayer layer : layers.get(place)) {
      Graphics2D own = (Graphics2D) pen.create();
      layer.paint(own);
      own.dispose();
    }
  }

  /** The camera of the picture that is painted, in user pixels. */
  private Camera shownCamera() {
    return viewpoint.camera();
  }

  @Override
  public JComponent component() {
    return whole;
  }

  @Override
  public Optional<Hit> hit(double x, double y) {
    return pointing.hit(x, y);
  }

  @Override
  public Ray ray(double x, double y) {
    return pointing.ray(x, y);
  }

  @Override
  public Camera.Pixel project(Point3 point) {
    return pointing.project(point);
  }

  @Override
  public Point3 beside(Point3 through, double x, double y) {
    return pointing.beside(through, x, y);
  }

  @Override
  public double azimuth() {
    return viewpoint.camera().angle().azimuth();
  }

  @Override
  public double elevation() {
    return viewpoint.camera().angle().elevation();
  }

  @Override
  public void lookFlatFrom(double azimuth) {
    viewpoint.setFlat(true);
    viewpoint.lookAt(ViewAngle.level(azimuth), overlay.everything());
  }

  @Override
  public void use(CanvasTool next) {
    useNone();
    tool = Optional.of(next);
    view.setCursor(Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR));
    overlay.setHint(next.hint());
    view.repaint();
  }

  @Override
  public void useNone() {
    Optional<CanvasTool> before = tool;
    tool = Optional.empty();
    before.ifPresent(CanvasTool::cancelled);
    view.setCursor(Cursor.getDefaultCursor());
    overlay.setHint("");
    view.repaint();
  }

  @Override
  public void preview(Optional<Preview> preview) {
    showing.setPreview(preview);
  }

  @Override
  public void add(CanvasLayer layer, CanvasLayer.Place place) {
    layers.get(place).add(layer);
    view.repaint();
  }

  @Override
  public void redraw() {
    view.repaint();
  }

  /** Stops drawing and frees what the drawing holds. */
  @Override
  public void close() {
    pictures.close();
  }

  /** What the mouse does. */
  private final class Hands implements CanvasMouse.Target {
    @Override
    public boolean pressed(Pointer pointer) {
      boolean taken = tool.isPresent() && tool.get().pressed(pointer);
      view.repaint();
      return taken;
    }

    @Override
    public void dragged(Pointer pointer) {
      tool.ifPresent(t -> t.dragged(pointer));
      view.repaint();
    }

    @Override
    public void released(Pointer pointer) {
      tool.ifPresent(t -> t.released(pointer));
      view.repaint();
    }

    @Override
    public void hovered(Pointer pointer) {
      tool.ifPresent(t -> t.moved(pointer));
      boolean changed = overlay.hover(hit(pointer.x(), pointer.y()), pointer);
      if (changed || tool.isPresent()) {
        view.repaint();
      }
    }

    @Override
    public void left() {
      overlay.forgetHovered();
      view.repaint();
    }

    @Override
    public void clicked(Pointer pointer) {
      Optional<String> picked = hit(pointer.x(), pointer.y()).map(h -> h.spot().segment());
      boolean more = pointer.shift() || pointer.control();
      work.select(Picking.after(work.selection(), picked, more));
    }
  }
}
