// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.history.History;
import boughwright.modeller.plan.Document;
import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Framing;
import boughwright.viewer.scene.LiveScene;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.window.work.Workspace;
import java.util.Optional;

/** A tree on a canvas with every word beside it that a person can ask for. */
public final class FullyLabelled {
  private final Showing showing;

  public FullyLabelled(Document document) {
    Workspace work = new Workspace(History.opened(document), Optional.empty(), DisplayUnits.USUAL);
    showing = new Showing(work);
    Looks looks = Looks.USUAL;
    for (Looks.Extra extra :
        new Looks.Extra[] {Looks.Extra.NAMES, Looks.Extra.CALIPERS, Looks.Extra.HEIGHTS}) {
      looks = looks.with(extra, true);
    }
    showing.setLooks(looks);
  }

  public Scene scene() {
    return new LiveScene().make(showing.shown(true));
  }

  /** A view that holds the whole tree. */
  public Camera whole(Camera from) {
    return Framing.fit(from, showing.capsules().frame(), new Framing.Margins(40, 50, 40, 60));
  }
}
