// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Material;
import boughwright.physics.trial.TreeStand;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleConsumer;

/**
 * A coil that would hold a place near a target once the hand that bent it has let go.
 *
 * @param best what is of use and comes nearest within the risk allowed; else what comes nearest;
 *     empty where nothing brings it nearer
 * @param way how far the target is before anything is bent [m]
 * @param strongest how many times the moment of the bent wood the strongest wire that is sold
 *     stands; below 1 none holds the bend, 0 where none was looked at [1]
 */
public record HoldingCoils(Optional<Best> best, double way, double strongest) {
  /** The part of the way that wire must bring to be of use [1] (a choice). */
  public static final double USEFUL = 0.5;

  /** The part of the way that it must add to what the wood keeps by itself [1] (a choice). */
  public static final double ADDS = 0.2;

  /** Of wire that comes within this part of the way of the nearest the least risk counts [1]. */
  private static final double ABOUT = 0.05;

  /** So many of the nearest are drawn (a choice). */
  private static final int DRAWN = 3;

  /** Parts of the work that are done when the pulls, and when the coils are found (a choice). */
  private static final double PULLS = 0.2;

  private static final double COILS = 0.8;

  public HoldingCoils {
    Objects.requireNonNull(best, "best");
  }

  /**
   * The best wire.
   *
   * @param choice the wire, and how it is bent on
   * @param brings how much nearer it brings the place [m]
   * @param alone how much nearer the same bend would with the wire taken off at once [m]
   */
  public record Best(Choice choice, double brings, double alone) {
    public Best {
      Objects.requireNonNull(choice, "choice");
    }
  }

  /** The wire that is worth winding, if any is. */
  public Optional<Choice> useful() {
    return best.filter(one -> one.brings >= USEFUL * way && adds(one)).map(Best::choice);
  }

  /** Whether wire holds more than the wood keeps by itself. */
  public boolean adds(Best one) {
    return one.brings - one.alone >= ADDS * way;
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
        ? new HoldingCoils(Optional.empty(), 0, 0)
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
    List<Rested> found = sorted(rested(request, probe, search, wishes), start.miss());
    done.accept(COILS);
    Teller teller = new Teller(request, probe);
    HeldWithin within = new HeldWithin(request);
    Optional<HoldingCoils> first = Optional.empty();
    for (int n = 0; n < Math.min(DRAWN, found.size()); n++) {
      Optional<HoldingCoils> told =
          teller
              .told(found.get(n).candidate, Choice.Why.COIL)
              .flatMap(within::allowed)
              .flatMap(one -> best(request, probe, one, start.miss()))
              .map(one -> new HoldingCoils(Optional.of(one), start.miss(), search.strongest()));
      if (told.filter(one -> one.useful().isPresent()).isPresent()) {
        return told.get();
      }
      first = first.isPresent() ? first : told;
      done.accept(COILS + (1 - COILS) * (n + 1) / DRAWN);
    }
    return first.orElseGet(
        () -> new HoldingCoils(Optional.empty(), start.miss(), search.strongest()));
  }

  /** Wire, and how near the same bend rests without it [m]. */
  private record Rested(Candidate candidate, double alone) {
    boolean isUseful(double way) {
      return candidate.miss() <= (1 - USEFUL) * way && alone - candidate.miss() >= ADDS * way;
    }
  }

  private static List<Rested> rested(
      ReachRequest request, Probe probe, CoilSearch search, List<Wish> wishes) {
    return search.candidates(wishes, List.of()).parallelStream()
        .map(
            one -> {
              OptionalDouble alone = probe.unwired(request, one.winding().orElseThrow());
              return new Rested(one, alone.orElse(one.miss()));
            })
        .toList();
  }

  /** What is of use first, the nearest first; of those about as near the least risk. */
  private static List<Rested> sorted(List<Rested> all, double way) {
    double least =
        all.stream()
            .min(
                Comparator.comparing((Rested one) -> !one.isUseful(way))
                    .thenComparingDouble(one -> one.candidate.miss()))
            .map(one -> one.candidate.miss())
            .orElse(0.0);
    return all.stream()
        .sorted(
            Comparator.comparing((Rested one) -> !one.isUseful(way))
                .thenComparingDouble(one -> Math.max(one.candidate.miss(), least + ABOUT * way))
                .thenComparingDouble(one -> one.candidate.risk().breaking()))
        .toList();
  }

  private static Optional<Best> best(ReachRequest request, Probe probe, Choice choice, double way) {
    OptionalDouble free = probe.unwired(request, choice.bend().orElseThrow().winding());
    return free.isPresent()
        ? Optional.of(new Best(choice, way - choice.miss(), way - free.getAsDouble()))
        : Optional.empty();
  }
}
