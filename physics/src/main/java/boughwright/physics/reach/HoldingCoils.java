// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Material;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleConsumer;

/**
 * A coil that would hold a place near a target once the hand that bent it has let go.
 *
 * @param choice what comes nearest of all that stands the bent wood within the risk allowed; empty
 *     where no wire does
 * @param strongest how many times the moment of the bent wood the strongest wire that is sold
 *     stands; below 1 none holds the bend, 0 where none was looked at [1]
 */
public record HoldingCoils(Optional<Choice> choice, double strongest) {
  /** Parts of the work that are done when the pulls, and when the coils are found (a choice). */
  private static final double PULLS = 0.2;

  private static final double COILS = 0.8;

  public HoldingCoils {
    Objects.requireNonNull(choice, "choice");
  }

  /**
   * What is allowed.
   *
   * @param metals metals in which wire is sold, at least one
   * @param mostRisk most that breaking may risk while it is bent [1]
   */
  public record Allowed(Set<Material> metals, double mostRisk) {
    public Allowed {
      metals = Set.copyOf(metals);
    }
  }

  /**
   * Looks for them; long work, asked from any thread.
   *
   * @param target where the place is wanted [m, tree frame as measured]
   * @param done told the part that is done [1]; what it throws ends the search
   */
  public static HoldingCoils of(Grab grab, Point3 target, Allowed allowed, DoubleConsumer done) {
    Objects.requireNonNull(target, "target");
    ReachRequest request =
        new ReachRequest(
            grab.tree(),
            grab.plan().withProposals(grab.kept()),
            grab.kept(),
            grab.species(),
            new Target.Point(grab.spot(), target),
            new ReachRequest.Wishes(grab.anchors(), allowed.mostRisk(), 1, allowed.metals()));
    Probe probe =
        new Probe(
            new TreeStand(request.tree(), request.plan(), request.species(), Reach.SEARCHING),
            request.target(),
            request.kept());
    Optional<Tried> start = probe.alone();
    return start.isEmpty()
        ? new HoldingCoils(Optional.empty(), 0)
        : sought(request, probe, start.get(), done);
  }

  private static HoldingCoils sought(
      ReachRequest request, Probe probe, Tried start, DoubleConsumer done) {
    LimbPath path = new LimbPath(probe.stand(), request.target().spot());
    WishFinder finder = new WishFinder(probe, start);
    List<Wish> wishes =
        path.places().parallelStream().map(finder::at).flatMap(Optional::stream).toList();
    done.accept(PULLS);
    CoilSearch search = new CoilSearch(request, probe, path, start);
    List<Candidate> found = new ArrayList<>(search.candidates(wishes, List.of()));
    found.sort(Comparator.comparingDouble(Candidate::miss));
    done.accept(COILS);
    Teller teller = new Teller(request, probe);
    HeldWithin within = new HeldWithin(request);
    for (int n = 0; n < found.size(); n++) {
      Optional<Choice> told = teller.told(found.get(n), Choice.Why.COIL).flatMap(within::soundly);
      if (told.isPresent()) {
        return new HoldingCoils(told, search.strongest());
      }
      done.accept(COILS + (1 - COILS) * (n + 1) / found.size());
    }
    return new HoldingCoils(Optional.empty(), search.strongest());
  }
}
