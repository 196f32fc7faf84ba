// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.gl.LiveRenderer;
import boughwright.viewer.gl.Quality;
import boughwright.viewer.gl.SceneRenderer;
import boughwright.viewer.picture.SceneWords;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.StagesView;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.look.Tone;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.awt.BorderLayout;
import java.awt.Graphics2D;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The tree of a workspace on the screen. Belongs to the event thread. */
public final class TreeCanvas implements Canvas, AutoCloseable {
  private final Workspace work;
  private final Showing showing;
  private final Viewpoint viewpoint = new Viewpoint(this::moved);
  private final Pointing pointing;
  private final Pictures pictures;
  private final CanvasView view;
  private final CanvasMouse mouse;
  private final JPanel whole = new JPanel(new BorderLayout());
  private final Overlay overlay;
  private final Views views;
  private final Branches branches;
  private final Strip strip;
  private final List<Command> commands = new ArrayList<>();
  private final List<Runnable> listeners = new ArrayList<>();
  private final Layers layers;
  private final Handling handling;
  private final OwnFacing facing;
  private final Pace pace = new Pace();
  private boolean framed;
  private List<Point3> traced = List.of();

  /** A canvas on a workspace, which it listens to as long as that lives. */
  public TreeCanvas(Workspace work) {
    this.work = work;
    showing = new Showing(work);
    pointing = new Pointing(showing, viewpoint);
    overlay = new Overlay(work, showing);
    layers = new Layers(overlay, viewpoint);
    view = new CanvasView(layers::paintBehind, this::paintOver, overlay::words);
    pictures = new Pictures(this::wanted, this::drawn, e -> cannotDraw(e.getMessage()));
    facing = new OwnFacing(showing, new OwnFacing.Ground(viewpoint, view, this::drawer));
    views = new Views(work, showing, viewpoint, overlay);
    branches = new Branches(work, showing);
    commands.addAll(views.commands());
    commands.addAll(branches.commands());
    commands.add(ImageClip.command(this::copy, () -> view.picture().isPresent()));
    strip = new Strip(showing, commands);
    handling = new Handling(work, pointing, overlay, new Handling.Ground(view, strip));
    mouse = new CanvasMouse(handling, viewpoint);
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
    whole.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            strip.fit(whole.getSize());
          }
        });
    whole.setName("canvas");
    whole.add(view);
    whole.add(strip.component(), BorderLayout.SOUTH);
    CanvasKeys.bind(view, commands, this::cancel);
    showing.listen(this::shownChanged);
    work.listen(this::heard);
  }

  private void heard(Topic topic) {
    if (topic == Topic.OPENED) {
      framed = false;
      traced = List.of();
    }
    if (topic == Topic.FILE) {
      frame();
    }
    if (topic == Topic.SELECTION) {
      // The wood stays as it is: words are written anew, without a rougher picture in between.
      pictures.askStill();
      view.repaint();
      tell();
    }
  }

  /** Forgets what a tool has begun; without a tool, what is picked. */
  private void cancel() {
    mouse.abort();
    handling.cancel();
  }

  private void paintOver(Graphics2D pen) {
    layers.paintOver(pen, handling);
  }

  private void drawn(LivePicture picture) {
    LiveRenderer.Frame frame = picture.frame();
    if (frame.request().ground().quality() == Quality.MOVING) {
      pace.took(frame.nanoseconds());
    }
    view.show(picture);
  }

  /**
   * Runs something once, when the first picture is on the screen or it is known that none will be.
   */
  public void whenDrawn(Runnable run) {
    view.whenDrawn(run);
  }

  /** What can be done to the view by menu and key, ids {@code view.*} and {@code picture.*}. */
  public List<Command> commands() {
    return List.copyOf(commands);
  }

  /** Asks to be told when what is shown or picked has changed. */
  public void listen(Runnable listener) {
    listeners.add(listener);
  }

  private void tell() {
    strip.follow();
    listeners.forEach(Runnable::run);
  }

  /** What a person has chosen to see. */
  public Looks looks() {
    return showing.looks();
  }

  public void setLooks(Looks looks) {
    showing.setLooks(looks);
  }

  /** Shows something or not. */
  public void show(Looks.Extra extra, boolean on) {
    showing.setLooks(showing.looks().with(extra, on));
  }

  /** Whether changes of view glide, as they do, or come at once. */
  public void setSmooth(boolean smooth) {
    viewpoint.setSmooth(smooth);
  }

  /** What is picked, in words. */
  String pickedWords() {
    return overlay.pickedWords();
  }

  /** What is written beside the mouse. */
  String hoveredWords() {
    return overlay.hoveredWords();
  }

  private void shownChanged() {
    overlay.forgetHovered();
    if (showing.preview().isEmpty()) {
      viewpoint.seeAllOf(showing.capsules().bounds());
    }
    boolean flat = !showing.looks().has(Looks.Extra.PERSPECTIVE);
    if (viewpoint.isFlat() != flat) {
      viewpoint.setFlat(flat);
    }
    // what lies over the tree is painted with its next picture, so that they agree
    pictures.ask();
    tell();
  }

  private void moved() {
    pictures.ask();
    facing.moved();
  }

  private void resized() {
    if (view.getWidth() < 1 || view.getHeight() < 1) {
      return;
    }
    viewpoint.resize(view.getWidth(), view.getHeight());
    viewpoint.seeAllOf(showing.capsules().bounds());
    if (!framed) {
      frame();
    } else if (viewpoint.isWhole()) {
      viewpoint.setAt(viewpoint.camera().angle(), everything());
    }
  }

  /** Looks at another tree as a whole from its front. */
  private void frame() {
    if (!framed && view.getWidth() > 0 && view.getHeight() > 0) {
      framed = true;
      viewpoint.setAt(ViewAngle.level(views.front()), overlay.everything());
    }
  }

  private LiveRenderer.Request wanted(Quality quality) {
    double device = view.deviceScale();
    double scale = quality == Quality.MOVING ? pace.scale(device) : device;
    boolean dark = Theme.tone() == Tone.DARK;
    pictures.write(
        new SceneWords.Wanted(
            device * Theme.textSize().percent() / 100,
            dark,
            showing.looks().written(),
            work.units()));
    return new LiveRenderer.Request(
        showing.shown(quality == Quality.STILL),
        viewpoint.camera().finer(scale),
        scale,
        new SceneRenderer.Ground(quality, dark));
  }

  /** Says why there is no tree to be seen, and how to mend it; all else works on. */
  void cannotDraw(String why) {
    view.say(
        "The tree cannot be drawn: "
            + why
            + ". Tables and numbers work without it, and so does the command line.");
  }

  /** Copies what is seen to the clipboard. */
  public void copy() {
    if (view.picture().isPresent()) {
      ImageClip.copy(
          paper().compose(view.picture().get(), view.deviceScale(), viewpoint.camera()), view);
      work.say(new Notice(Notice.Kind.DONE, "The picture is on the clipboard."));
    }
  }

  /** Pictures of what is shown now; on this event thread, to be drawn on another one. */
  public Snapshots snapshots() {
    return new Snapshots(
        pictures.renderer(),
        paper(),
        new Snapshots.Moment(
            viewpoint.camera(), showing.shown(true), showing.before(), PoseSlider.words(showing)));
  }

  private Portraits drawer() {
    return new Portraits(pictures.renderer(), paper(), work.document().tree(), work.plan());
  }

  private CanvasPaper paper() {
    return new CanvasPaper(layers, showing.looks(), work.units(), view.deviceScale());
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
    return pointing.azimuth();
  }

  @Override
  public double elevation() {
    return pointing.elevation();
  }

  @Override
  public void lookFlatFrom(double azimuth, List<Point3> also) {
    show(Looks.Extra.PERSPECTIVE, false);
    traced = List.copyOf(also);
    viewpoint.lookAt(ViewAngle.level(azimuth), everything());
  }

  @Override
  public boolean isShown(String segment) {
    return !showing.looks().visibility().hidden().contains(segment);
  }

  @Override
  public void reveal(List<Point3> points) {
    boolean seen =
        points.stream()
            .map(this::project)
            .allMatch(at -> view.contains((int) at.x(), (int) at.y()));
    if (framed && !seen) {
      viewpoint.lookAt(viewpoint.camera().angle(), everything());
    }
  }

  /** All that is to be in view: the tree, and the photo that is traced. */
  private List<StagesView.Outline> everything() {
    List<StagesView.Outline> seen = new ArrayList<>(overlay.everything());
    if (!traced.isEmpty()) {
      seen.add(new StagesView.Outline(traced, Collections.nCopies(traced.size(), 0.0)));
    }
    return seen;
  }

  @Override
  public void use(CanvasTool next) {
    handling.use(next);
  }

  @Override
  public void useNone() {
    handling.useNone();
  }

  @Override
  public void preview(Optional<Preview> preview) {
    showing.setPreview(preview);
  }

  @Override
  public void measured(boolean on) {
    if (showing.isMeasured() != on) {
      view.fade(viewpoint.isSmooth());
      showing.setMeasured(on);
      if (viewpoint.isWhole()) {
        viewpoint.lookAt(viewpoint.camera().angle(), everything());
      }
    }
  }

  @Override
  public Facing facing() {
    return facing;
  }

  @Override
  public void add(CanvasLayer layer, CanvasLayer.Place place) {
    layers.add(layer, place);
    view.repaint();
  }

  @Override
  public void redraw() {
    view.repaint();
  }

  /** Whether the picture on the screen is the good one of what is to be seen now. */
  boolean isSettled() {
    LiveRenderer.Request good = wanted(Quality.STILL);
    return !viewpoint.isGliding()
        && !view.isFading()
        && !pictures.isBusy()
        && view.picture().filter(p -> p.frame().request().equals(good)).isPresent();
  }

  /** Stops drawing and frees what the drawing holds. */
  @Override
  public void close() {
    pictures.close();
  }
}
