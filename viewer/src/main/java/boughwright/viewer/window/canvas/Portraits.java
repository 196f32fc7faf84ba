// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Tree;
import boughwright.viewer.gl.LiveRenderer;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Framing;
import boughwright.viewer.scene.LiveTree;
import boughwright.viewer.scene.Shown;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.scene.Visibility;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Small pictures of a tree as it stands before the viewer. Made on the event thread; drawn on any
 * other one.
 */
public final class Portraits {
  /** No picture takes longer, even without a graphics card [s]. */
  private static final long PATIENCE = 60;

  /** How deep is drawn, over the size of the tree [1]. */
  private static final double DEPTH = 4;

  private static final double MARGIN = 0.06;

  private final LiveRenderer renderer;
  private final CanvasPaper paper;
  private final Tree tree;
  private final Optional<Plan> plan;

  Portraits(LiveRenderer renderer, CanvasPaper paper, Tree tree, Optional<Plan> plan) {
    this.renderer = renderer;
    this.paper = paper;
    this.tree = tree;
    this.plan = plan;
  }

  /**
   * Draws the tree in several ways, all in one scale.
   *
   * @param size of each picture [user pixels]
   * @throws InputException if it cannot be drawn
   */
  public List<BufferedImage> draw(List<Stance> stances, Dimension size) throws InputException {
    List<Shown> shown = stances.stream().map(this::shown).toList();
    List<Camera> cameras = new ArrayList<>();
    double scale = Double.POSITIVE_INFINITY;
    for (int n = 0; n < shown.size(); n++) {
      Camera fit = camera(shown.get(n), stances.get(n), size);
      scale = Math.min(scale, fit.pixelsPerMetre());
      cameras.add(fit);
    }
    List<BufferedImage> pictures = new ArrayList<>();
    for (int n = 0; n < shown.size(); n++) {
      pictures.add(draw(shown.get(n), cameras.get(n).withScale(scale)));
    }
    return pictures;
  }

  private Shown shown(Stance stance) {
    LiveTree standing = new LiveTree(tree, Optional.of(stance.of(plan)));
    return new Shown(
        standing,
        Optional.empty(),
        Optional.empty(),
        standing.measured(),
        List.of(),
        Visibility.ALL,
        new Shown.Options(Optional.empty(), true, List.of(), Set.of(Shown.Way.LEVEL_CONTAINER)));
  }

  private Camera camera(Shown shown, Stance stance, Dimension size) {
    double device = paper.deviceScale();
    int width = (int) Math.max(1, Math.round(size.width * device));
    int height = (int) Math.max(1, Math.round(size.height * device));
    double margin = MARGIN * Math.min(width, height);
    double depth = DEPTH * Math.max(0.05, shown.tree().capsules(shown.pose()).bounds().diagonal());
    ViewAngle angle = new ViewAngle(stance.pose().azimuth(), stance.elevation());
    Camera camera = new Camera(angle, shown.tree().base(), 1000, width, height, depth);
    return Framing.fit(
        camera, paper.limbs(shown), new Framing.Margins(margin, margin, margin, margin));
  }

  private BufferedImage draw(Shown shown, Camera camera) throws InputException {
    CompletableFuture<LiveRenderer.Frame> drawn = new CompletableFuture<>();
    renderer.drawOnce(
        new LiveRenderer.Request(shown, camera, paper.deviceScale(), paper.ground()),
        drawn::complete,
        drawn::completeExceptionally);
    try {
      LivePicture picture = LivePicture.of(drawn.get(PATIENCE, TimeUnit.SECONDS), paper.wordless());
      return paper.compose(picture, paper.deviceScale(), null);
    } catch (ExecutionException e) {
      throw fault(e.getCause().getMessage(), "Everything but pictures works without it");
    } catch (TimeoutException e) {
      throw fault("drawing takes too long", "Ask for it again");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw fault("drawing was stopped", "Ask for it again");
    }
  }

  private static InputException fault(String found, String remedy) {
    return new InputException(Problem.fault(Place.of("picture"), "no-picture", found, remedy));
  }
}
