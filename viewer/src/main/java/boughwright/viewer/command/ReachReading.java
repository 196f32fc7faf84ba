// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Tree;
import boughwright.physics.reach.AnchorSort;
import boughwright.physics.reach.ReachRequest;
import boughwright.physics.reach.Target;
import boughwright.physics.reach.Targets;
import boughwright.physics.trial.TrialSpecies;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Reads what is to be reached; notes a fault for each thing amiss. */
final class ReachReading {
  /** No point of a tree in a container is further away [mm]. */
  private static final double FARTHEST = 10_000;

  /** The id of the plan that is tried where the person named none. */
  private static final String NO_PLAN = "reach";

  /** Metals that are tried where none is named. */
  private static final Set<Material> USUAL_METALS =
      EnumSet.of(Material.COPPER_ANNEALED, Material.ALUMINIUM);

  private final ReachOptions options;
  private final SearchOptions search;
  private final Faults faults;
  private final OptionValues values;

  ReachReading(ReachOptions options, SearchOptions search, Faults faults) {
    this.options = options;
    this.search = search;
    this.faults = faults;
    values = new OptionValues(faults);
  }

  /**
   * The request; empty, with faults noted, if anything is amiss.
   *
   * @param mostRisk most that breaking may risk [1]
   */
  Optional<ReachRequest> read(Optional<Document> document, double mostRisk) {
    int before = faults.all().size();
    Optional<Plan> plan = document.flatMap(this::plan);
    Optional<Spot> spot = spot(document.map(Document::tree));
    Optional<ReachRequest.Wishes> wishes = wishes(mostRisk);
    Optional<Point3> point = point();
    Optional<Direction3> direction =
        options.direction == null
            ? Optional.empty()
            : values.direction(options.direction, "--direction");
    wantedOnce();
    if (faults.all().size() > before || document.isEmpty()) {
      return Optional.empty();
    }
    Tree tree = document.get().tree();
    Species species = TrialSpecies.of(tree);
    Targets targets = new Targets(tree, plan.orElseThrow(), species);
    Optional<Spot> left = left(spot.orElseThrow(), targets);
    List<Proposal> kept = options.keep ? plan.get().proposals() : List.of();
    return left.map(
        at ->
            new ReachRequest(
                tree,
                plan.get(),
                kept,
                species,
                target(targets, at, point, direction),
                wishes.orElseThrow()));
  }

  private Target target(
      Targets targets, Spot at, Optional<Point3> point, Optional<Direction3> direction) {
    if (options.upright) {
      return targets.upright(at);
    }
    return direction
        .map(way -> targets.heading(at, way))
        .orElseGet(() -> new Target.Point(at, point.orElseThrow()));
  }

  private Optional<Plan> plan(Document document) {
    if (options.keep && search.planId().isEmpty()) {
      faults.add(
          "--keep",
          "no-plan",
          "it is not said whose proposals are kept",
          "Add --plan ID, or leave --keep out");
    }
    return search.plan(document, NO_PLAN, faults);
  }

  private Optional<Spot> spot(Optional<Tree> tree) {
    if (!values.isGiven("--segment", options.segment, "Give the id of the segment to bring")) {
      return Optional.empty();
    }
    boolean known =
        tree.map(one -> SegmentChoice.check(one, options.segment, faults)).orElse(false);
    OptionalDouble along =
        options.along == null
            ? OptionalDouble.of(1)
            : values.number(
                options.along, new OptionValues.Range("--along", 0, 1, "a fraction of its length"));
    return known && along.isPresent()
        ? Optional.of(new Spot(options.segment, along.getAsDouble()))
        : Optional.empty();
  }

  /** The place where the cuts leave it; the end of what is left where no place was said. */
  private Optional<Spot> left(Spot spot, Targets targets) {
    double left = targets.left(spot.segment());
    if (left > 0 && (options.along == null || spot.along() <= left)) {
      return Optional.of(new Spot(spot.segment(), Math.min(left, spot.along())));
    }
    faults.add(
        left > 0 ? "--along" : "--segment",
        "cut-away",
        "that place of "
            + UsageFaults.quoted(spot.segment())
            + " is gone with the cuts of the plan",
        left > 0
            ? "Give at most " + Shown.plain(left) + ", or leave --along out"
            : "Name a segment that the cuts leave, or another --plan");
    return Optional.empty();
  }

  private void wantedOnce() {
    long said =
        Stream.of(options.to != null, options.direction != null, options.upright)
            .filter(given -> given)
            .count();
    if (said != 1) {
      faults.add(
          "--to-mm",
          said == 0 ? "no-target" : "two-targets",
          said == 0 ? "it is not said what is wanted" : "more than one thing is wanted",
          "Give one of --to-mm X,Y,Z, --direction X,Y,Z and --upright");
    }
  }

  private Optional<Point3> point() {
    if (options.to == null) {
      return Optional.empty();
    }
    return values
        .three(
            options.to,
            new OptionValues.Range("--to-mm", -FARTHEST, FARTHEST, "x,y,z in millimetres"))
        .map(v -> new Point3(v[0] / 1000, v[1] / 1000, v[2] / 1000));
  }

  private Optional<ReachRequest.Wishes> wishes(double mostRisk) {
    ReachRequest.Wishes usual = ReachRequest.Wishes.USUAL;
    Set<AnchorSort> sorts = search.anchors(faults);
    long lines =
        values.whole(
            options.lines, new OptionValues.Range("--lines", 1, 2, "1 or 2"), usual.lines());
    Set<Material> metals = metals();
    return sorts.isEmpty()
        ? Optional.empty()
        : Optional.of(new ReachRequest.Wishes(sorts, mostRisk, (int) lines, metals));
  }

  private Set<Material> metals() {
    if (options.metal == null) {
      return options.coil ? USUAL_METALS : Set.of();
    }
    if (!options.coil) {
      faults.add("--metal", "no-coil", "nothing is coiled", "Add --coil, or leave --metal out");
    }
    Set<Material> metals = EnumSet.noneOf(Material.class);
    for (String word : options.metal.strip().split("\\s*,\\s*", -1)) {
      Optional<Material> metal =
          Material.of(word.toLowerCase(Locale.ROOT)).filter(Material::isWire);
      metal.ifPresent(metals::add);
      if (metal.isEmpty()) {
        faults.add(
            "--metal",
            "unknown-metal",
            UsageFaults.quoted(word) + " is no wire that can be coiled",
            "Choose from " + String.join(",", Material.wires()));
      }
    }
    return metals;
  }
}
