// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.viewer.gl.LiveRenderer;
import boughwright.viewer.picture.PictureFile;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Framing;
import boughwright.viewer.scene.Shown;
import boughwright.viewer.scene.ViewAngle;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.DoubleConsumer;

/**
 * Pictures of what a canvas shows at the moment it is asked. Made on the event thread; the pictures
 * are then drawn on any other thread, and show that moment.
 */
public final class Snapshots {
  /** The largest side [pixels]. */
  public static final int LARGEST = 6000;

  /** The smallest side [pixels]. */
  public static final int SMALLEST = 100;

  /** Words on a half of a pair are so much larger than the tree on it would have them [1]. */
  private static final double PAIR_WORDS = 1.6;

  /** The most views of a turntable. */
  public static final int MOST_VIEWS = 720;

  /** No picture takes longer, even without a graphics card [s]. */
  private static final long PATIENCE = 180;

  private final LiveRenderer renderer;
  private final CanvasPaper paper;
  private final Camera camera;
  private final Shown shown;
  private final Shown before;
  private final String name;

  Snapshots(LiveRenderer renderer, CanvasPaper paper, Moment moment) {
    this.renderer = renderer;
    this.paper = paper;
    camera = moment.camera();
    shown = moment.shown();
    before = moment.before();
    name = moment.name();
  }

  /**
   * What is shown.
   *
   * @param camera from where, in user pixels
   * @param shown in the pose that is shown
   * @param before the same tree as measured
   * @param name what the shown pose is called
   */
  record Moment(Camera camera, Shown shown, Shown before, String name) {}

  /**
   * How large a picture is.
   *
   * @param width {@value #SMALLEST} to {@value #LARGEST} [pixels]
   * @param height {@value #SMALLEST} to {@value #LARGEST} [pixels]
   */
  public record Size(int width, int height) {
    /**
     * @throws IllegalArgumentException with the limits, if it is outside them
     */
    public Size {
      if (Math.min(width, height) < SMALLEST || Math.max(width, height) > LARGEST) {
        throw new IllegalArgumentException(
            "a picture of "
                + width
                + " by "
                + height
                + " pixels; each side has "
                + SMALLEST
                + " to "
                + LARGEST);
      }
    }
  }

  /** How large the canvas is on the screen, in pixels of the screen. */
  public Size size() {
    double scale = paper.deviceScale();
    return new Size(side(camera.width() * scale), side(camera.height() * scale));
  }

  private static int side(double pixels) {
    return (int) Math.min(LARGEST, Math.max(SMALLEST, Math.round(pixels)));
  }

  /**
   * What is seen, at any size.
   *
   * @throws InputException if this machine cannot draw it
   */
  public BufferedImage picture(Size size) throws InputException {
    return draw(shown, fitted(size), true);
  }

  /**
   * Saves what is seen, whole or not at all.
   *
   * @throws InputException if it cannot be drawn or written; nothing on disk is changed then
   */
  public void save(Path file, Size size) throws InputException {
    PictureFile.write(picture(size), file);
  }

  /**
   * The tree as measured and in the pose that is shown, beside each other in the same scale.
   *
   * @param size of both together
   * @throws InputException if this machine cannot draw it
   */
  public BufferedImage pair(Size size) throws InputException {
    Size half = new Size(Math.max(SMALLEST, size.width() / 2), size.height());
    BufferedImage both =
        new BufferedImage(2 * half.width(), half.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = both.createGraphics();
    Camera whole = whole(half);
    double factor =
        Math.min(
            PAIR_WORDS * half.width() / camera.width(), (double) half.height() / camera.height());
    BufferedImage left = draw(before, whole, new Manner(factor, false));
    BufferedImage right = draw(shown, whole, new Manner(factor, false));
    paper.caption(left, "as measured");
    paper.caption(right, name);
    pen.drawImage(left, 0, 0, null);
    pen.drawImage(right, half.width(), 0, null);
    pen.dispose();
    return both;
  }

  /**
   * Saves the pair, whole or not at all.
   *
   * @throws InputException if it cannot be drawn or written; nothing on disk is changed then
   */
  public void savePair(Path file, Size size) throws InputException {
    PictureFile.write(pair(size), file);
  }

  /**
   * Saves views from all round, each turned on by the same angle, as numbered files {@code
   * view-001.png} and so on; each is whole or not there.
   *
   * @param folder where; it is there already
   * @param views how many, 2 to {@value #MOST_VIEWS}
   * @param done told how much is done, 0 to 1; it may throw to stop
   * @return the files
   * @throws InputException if one cannot be drawn or written; those before it stay
   */
  public List<Path> saveTurntable(Path folder, int views, Size size, DoubleConsumer done)
      throws InputException {
    if (views < 2 || views > MOST_VIEWS) {
      throw fault("a turntable of " + views + " views", "Ask for 2 to " + MOST_VIEWS + " views");
    }
    List<Camera> cameras = turntable(fitted(size), views);
    List<Path> files = new ArrayList<>();
    for (int n = 0; n < views; n++) {
      Path file = folder.resolve(String.format(Locale.ROOT, "view-%03d.png", n + 1));
      PictureFile.write(draw(shown, cameras.get(n), false), file);
      files.add(file);
      done.accept((n + 1.0) / views);
    }
    return files;
  }

  /** Cameras all round the root base, in one scale in which every view holds the tree. */
  private List<Camera> turntable(Camera first, int views) {
    Point3 base = shown.tree().base();
    double margin = 0.06 * Math.min(first.width(), first.height());
    Framing.Margins margins = new Framing.Margins(margin, margin, margin, margin);
    List<Camera> cameras = new ArrayList<>();
    double scale = Double.POSITIVE_INFINITY;
    double height = 0;
    for (int n = 0; n < views; n++) {
      ViewAngle angle = first.angle().turned(2 * Math.PI * n / views, 0);
      Camera fit = Framing.fit(first.from(angle), paper.limbs(shown), margins);
      double aside =
          2
              * Math.abs(fit.target().minus(base).dot(angle.right().vector()))
              / (first.width() / fit.pixelsPerMetre());
      scale = Math.min(scale, fit.pixelsPerMetre() / (1 + aside));
      height += fit.target().z() / views;
      cameras.add(fit);
    }
    Point3 middle = new Point3(base.x(), base.y(), height);
    double common = scale;
    return cameras.stream().map(c -> Framing.scaled(c.at(middle), common)).toList();
  }

  /** The view in which a picture holds the tree in both its poses, as large as can be. */
  private Camera whole(Size size) {
    Framing.Margins margins =
        new Framing.Margins(
            0.06 * size.width(), 0.14 * size.height(), 0.06 * size.width(), 0.20 * size.height());
    return Framing.fit(fitted(size), paper.limbs(shown), margins);
  }

  private Camera fitted(Size size) {
    double factor =
        Math.min((double) size.width() / camera.width(), (double) size.height() / camera.height());
    return camera.finer(factor).sized(size.width(), size.height());
  }

  /**
   * How a picture is put together.
   *
   * @param factor how large words are, over those on the canvas [1]
   * @param layers whether what others lay behind and over the tree belongs to it
   */
  private record Manner(double factor, boolean layers) {}

  private BufferedImage draw(Shown what, Camera from, boolean layers) throws InputException {
    double factor =
        Math.min((double) from.width() / camera.width(), (double) from.height() / camera.height());
    return draw(what, from, new Manner(factor, layers));
  }

  private BufferedImage draw(Shown what, Camera from, Manner manner) throws InputException {
    double factor = manner.factor();
    CompletableFuture<LiveRenderer.Frame> drawn = new CompletableFuture<>();
    LiveRenderer.Request request =
        new LiveRenderer.Request(what.with(true), from, factor, paper.ground());
    renderer.drawOnce(request, drawn::complete, drawn::completeExceptionally);
    try {
      LiveRenderer.Frame frame = drawn.get(PATIENCE, TimeUnit.SECONDS);
      LivePicture picture = LivePicture.of(frame, paper.wanted(factor));
      return paper.compose(picture, factor, manner.layers() ? camera : null);
    } catch (ExecutionException e) {
      throw fault(e.getCause().getMessage(), "Everything but pictures works without it");
    } catch (TimeoutException e) {
      throw fault("drawing takes too long", "Ask for a smaller picture");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw fault("drawing was stopped", "Ask for it again");
    }
  }

  private static InputException fault(String found, String remedy) {
    return new InputException(Problem.fault(Place.of("picture"), "no-picture", found, remedy));
  }
}
