// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.plan.Material;
import boughwright.physics.reach.Grab;
import boughwright.physics.reach.HoldingCoils;
import boughwright.viewer.window.work.Background;
import java.util.Locale;
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
        .choice()
        .map(choice -> Draft.of(bent.target(), choice))
        .orElseGet(() -> bent.withoutWire(why(found)));
  }

  private static String why(HoldingCoils found) {
    if (found.strongest() > 0 && found.strongest() < 1) {
      return String.format(
          Locale.ROOT,
          "No wire that is sold holds this bend: the stoutest stands %.0f %% of what the bent wood"
              + " pushes back with. Bend it less, or hold it with a line.",
          100 * found.strongest());
    }
    return "Wire does not hold it there: what would is bent on at a risk of more than 1 in 20, or"
        + " lets it spring back. Bend it less, or hold it with a line.";
  }

  void stop() {
    search.ifPresent(Background.Job::cancel);
    search = Optional.empty();
  }
}
