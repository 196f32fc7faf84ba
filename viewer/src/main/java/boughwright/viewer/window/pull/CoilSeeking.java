// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.plan.Material;
import boughwright.physics.reach.Grab;
import boughwright.physics.reach.HoldingCoils;
import boughwright.viewer.window.work.Background;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Looks in the background for wire that holds what a hand bent. Belongs to the event thread. */
final class CoilSeeking {
  /** Metals that wire is sold in, and most that breaking may risk while it is bent on [1]. */
  private static final HoldingCoils.Allowed ALLOWED =
      new HoldingCoils.Allowed(Set.of(Material.ALUMINIUM, Material.COPPER_ANNEALED), 0.05);

  private final Background background;
  private Optional<Background.Job> search = Optional.empty();

  CoilSeeking(Background background) {
    this.background = background;
  }

  boolean isRunning() {
    return search.filter(Background.Job::isRunning).isPresent();
  }

  /** Looks for wire that holds it; gives the draft with its coil, or with why there is none. */
  void seek(Grab from, Draft bent, Consumer<Draft> done) {
    stop();
    search =
        Optional.of(
            background.start(
                "Looking for wire that holds it",
                progress ->
                    HoldingCoils.of(
                        from,
                        bent.target(),
                        ALLOWED,
                        part -> {
                          progress.now("bending and letting go");
                          progress.part(part);
                        }),
                found -> done.accept(drafted(bent, found))));
  }

  private static Draft drafted(Draft bent, HoldingCoils found) {
    return found
        .useful()
        .map(choice -> Draft.of(bent.target(), choice))
        .orElseGet(() -> bent.withoutWire(PullWords.noWire(found)));
  }

  void stop() {
    search.ifPresent(Background.Job::cancel);
    search = Optional.empty();
  }
}
