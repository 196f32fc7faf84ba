// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.viewer.window.canvas.Facing;
import boughwright.viewer.window.canvas.Portraits;
import boughwright.viewer.window.canvas.Stance;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.work.Background;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;

/** Small pictures of a list of fronts, drawn in the background, all in one scale. */
final class FrontPictures {
  private final Background background;
  private final Facing facing;
  private final Turning turning;
  private final Runnable drawn;
  private List<Stance> wanted = List.of();
  private Optional<Turning.Basis> basis = Optional.empty();
  private List<BufferedImage> pictures = List.of();
  private Optional<Background.Job> job = Optional.empty();

  /**
   * @param drawn told when pictures have come
   */
  FrontPictures(Background background, Facing facing, Turning turning, Runnable drawn) {
    this.background = background;
    this.facing = facing;
    this.turning = turning;
    this.drawn = drawn;
  }

  /** Asks for pictures of fronts of the tree as it is, unless they are there or on their way. */
  void want(List<FrontPose> fronts) {
    List<Stance> stances = fronts.stream().map(turning::stance).toList();
    Optional<Turning.Basis> now = Optional.of(turning.basis());
    if (stances.equals(wanted) && now.equals(basis)) {
      return;
    }
    job.ifPresent(Background.Job::cancel);
    wanted = stances;
    basis = now;
    pictures = List.of();
    Optional<Portraits> portraits = facing.portraits();
    if (stances.isEmpty() || portraits.isEmpty()) {
      // asked for again when the tree is drawn
      basis = Optional.empty();
      return;
    }
    Dimension size =
        new Dimension(Theme.px(PictureView.SIZE.width), Theme.px(PictureView.SIZE.height));
    job =
        Optional.of(
            background.start(
                "Drawing the fronts",
                progress -> portraits.get().draw(stances, size),
                images -> {
                  pictures = images;
                  drawn.run();
                }));
  }

  /** The picture of a front of those that were asked for. */
  Optional<BufferedImage> of(int n) {
    return n < pictures.size() ? Optional.of(pictures.get(n)) : Optional.empty();
  }
}
