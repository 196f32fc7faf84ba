// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Capsules;
import boughwright.viewer.scene.LiveTree;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.scene.Visibility;
import java.util.List;
import java.util.Optional;

/** Goes from pixels to places on the tree and back. Belongs to the event thread. */
final class Pointing {
  private final Showing showing;
  private final Viewpoint viewpoint;

  Pointing(Showing showing, Viewpoint viewpoint) {
    this.showing = showing;
    this.viewpoint = viewpoint;
  }

  /** Everything under a pixel, the nearest first. */
  List<Hit> hits(double x, double y) {
    return showing.capsules().all(sight(x, y), this::canBePicked).stream().map(this::hit).toList();
  }

  Optional<Hit> hit(double x, double y) {
    return showing.capsules().nearest(sight(x, y), this::canBePicked).map(this::hit);
  }

  private Camera.Sight sight(double x, double y) {
    return viewpoint.camera().sight(x, y);
  }

  private boolean canBePicked(int segment) {
    String id = tree().skeleton().segment(segment).id();
    return showing.looks().visibility().of(id) == Visibility.Way.SHOWN;
  }

  private LiveTree tree() {
    return showing.tree();
  }

  private Hit hit(Capsules.Struck struck) {
    return new Hit(
        new Spot(tree().skeleton().segment(struck.segment()).id(), struck.along()),
        tree().stand().measured(struck.axis()),
        tree().stand().measured(struck.bark()),
        showing.capsules().round(struck));
  }

  Ray ray(double x, double y) {
    Camera.Sight sight = sight(x, y);
    return new Ray(tree().stand().measured(sight.from()), tree().stand().measured(sight.along()));
  }

  Camera.Pixel project(Point3 point) {
    return viewpoint.camera().project(tree().stand().place(point));
  }

  Point3 beside(Point3 through, double x, double y) {
    return tree().stand().measured(viewpoint.camera().beside(tree().stand().place(through), x, y));
  }

  /** The azimuth the viewer stands at, as measured [rad]. */
  double azimuth() {
    ViewAngle angle = viewpoint.camera().angle();
    Direction3 toViewer = tree().stand().measured(angle.toViewer());
    boolean isLevelEnough = Math.hypot(toViewer.x(), toViewer.y()) > 1e-9;
    return isLevelEnough ? Math.atan2(-toViewer.x(), -toViewer.y()) : angle.azimuth();
  }

  /** How far above level the viewer looks from, as measured [rad]. */
  double elevation() {
    Direction3 toViewer = tree().stand().measured(viewpoint.camera().angle().toViewer());
    return Math.asin(Math.max(-1, Math.min(1, toViewer.z())));
  }
}
