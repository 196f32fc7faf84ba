// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.scene.StagesView;
import boughwright.viewer.scene.ViewAngle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Lets the tree stand otherwise than its plan has it. */
final class OwnFacing implements Facing {
  private final Showing showing;
  private final Ground ground;
  private final List<Runnable> listeners = new ArrayList<>();
  private Optional<ViewAngle> before = Optional.empty();

  /** On what it works. */
  record Ground(Viewpoint viewpoint, CanvasView view, Supplier<Portraits> portraits) {}

  OwnFacing(Showing showing, Ground ground) {
    this.showing = showing;
    this.ground = ground;
  }

  private List<StagesView.Outline> everything() {
    return showing.all().stream().distinct().flatMap(wood -> wood.frame().stream()).toList();
  }

  @Override
  public void stand(Optional<Stance> stance) {
    boolean begins = showing.stance().isEmpty() && stance.isPresent();
    boolean ends = showing.stance().isPresent() && stance.isEmpty();
    if (begins || ends) {
      ground.view().fade(ground.viewpoint().isSmooth());
    }
    showing.setStance(stance);
    stance.ifPresent(
        one -> ground.viewpoint().face(new ViewAngle(one.pose().azimuth(), one.elevation())));
    if (ends) {
      ground.viewpoint().lookAt(ViewAngle.level(azimuth()), everything());
    }
  }

  @Override
  public void showWhole() {
    ground.viewpoint().setAt(ground.viewpoint().camera().angle(), everything());
  }

  @Override
  public double azimuth() {
    return ground.viewpoint().camera().angle().azimuth();
  }

  @Override
  public double elevation() {
    return ground.viewpoint().camera().angle().elevation();
  }

  @Override
  public void whenTurned(Runnable listener) {
    listeners.add(listener);
  }

  /** The camera has moved. */
  void moved() {
    Optional<ViewAngle> now = Optional.of(ground.viewpoint().camera().angle());
    if (!now.equals(before)) {
      before = now;
      List.copyOf(listeners).forEach(Runnable::run);
    }
  }

  @Override
  public Optional<Portraits> portraits() {
    return ground.view().picture().map(seen -> ground.portraits().get());
  }
}
