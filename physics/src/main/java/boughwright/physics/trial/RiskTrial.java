// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.wood.Doubt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Tries a plan and says what it risks: the best guess gives the pose, many draws of everything that
 * is not known give the probabilities.
 */
public final class RiskTrial {
  private final TrialRequest request;
  private final RiskOptions options;
  private final Skeleton skeleton;
  private final Beliefs beliefs;
  private final WoodState state;
  private final Attempt best;
  private final Nearest[][] nearest;

  private RiskTrial(TrialRequest request, RiskOptions options) {
    this.request = request;
    this.options = options;
    skeleton = new Skeleton(request.tree());
    Cutting cutting = new Cutting(skeleton, request.plan().cuts());
    List<PullObservation> tests =
        PullObservations.agreed(
            request.tree(), request.species(), TrialWood.best(skeleton, request.species()));
    beliefs = new Beliefs(request, skeleton, tests);
    state = new WoodState(skeleton, beliefs.limbs(), beliefs.prior());
    best =
        Attempt.of(request.plan(), cutting, request.proposals(), beliefs.best(), request.options());
    nearest =
        best.holds()
            ? FailureScan.of(best.rods(), best.solution().pose(), state)
            : new Nearest[0][0];
  }

  /**
   * Tries a request; the answer holds a risk where some wood that is bent has a limit.
   *
   * @param request what to try
   * @param options how to sample
   */
  public static TrialResult run(TrialRequest request, RiskOptions options) {
    TrialResult plain = Trial.run(request);
    RiskTrial trial = new RiskTrial(request, options);
    return trial.hasLimits() ? plain.withRisk(trial.risk(), trial.notes()) : plain;
  }

  private boolean hasLimits() {
    return bent().stream().anyMatch(i -> !beliefs.best().segments().get(i).isElastic());
  }

  /** Segments some part of which carries load, in file order. */
  private List<Integer> bent() {
    List<Integer> bent = new ArrayList<>();
    for (int span = 0; span < best.rods().spans().size(); span++) {
      if (best.solution().pose().loadedTo(span) > 0) {
        bent.add(best.rods().run(span).piece().segment());
      }
    }
    return bent.stream().distinct().sorted().toList();
  }

  private List<String> notes() {
    boolean lines = !best.loads().lines().isEmpty();
    return RiskNotes.of(request.tree(), state, bent(), lines);
  }

  private Risk risk() {
    Inputs inputs = new Inputs(beliefs, skeleton, crackingLimb(), bent(), request.proposals());
    List<Draws> draws =
        new RiskSampler(new RiskCase(request, best.rods(), beliefs, state), inputs, options).run();
    DrawTally tally = new DrawTally(inputs.count());
    draws.forEach(group -> tally.add(group.tally()));
    int fallen = draws.stream().mapToInt(Draws::fallen).sum();
    return new Risk(
        failures(draws),
        tensions(draws),
        (double) fallen / options.samples(),
        tally.count() < 2
            ? List.of()
            : inputs.shares(tally, beliefs.prior().crack(), isTested(crackingLimb())),
        new LimitSampler(best, state).along(bent()),
        options.samples(),
        options.seed());
  }

  private boolean isTested(int limb) {
    return request.tree().pullTests().stream()
        .anyMatch(test -> beliefs.limbs().of(skeleton.indexOf(test.segment())) == limb);
  }

  /** The limb nearest to cracking under the best guess, or the first that is bent. */
  private int crackingLimb() {
    if (nearest.length == 0) {
      return beliefs.limbs().of(bent().get(0));
    }
    Nearest[] limbs = nearest[FailureMode.CRACK.ordinal()];
    int worst = 0;
    for (int limb = 1; limb < limbs.length; limb++) {
      worst = limbs[limb].margin() > limbs[worst].margin() ? limb : worst;
    }
    return worst;
  }

  private List<FailureRisk> failures(List<Draws> draws) {
    List<FailureRisk> out = new ArrayList<>();
    for (FailureMode mode : FailureMode.values()) {
      boolean works =
          mode == FailureMode.CRACK || draws.stream().anyMatch(group -> group.works(mode));
      if (works) {
        out.add(failure(mode, draws));
      }
    }
    out.sort(Comparator.comparingDouble((FailureRisk risk) -> risk.probability().p()).reversed());
    return out;
  }

  private FailureRisk failure(FailureMode mode, List<Draws> draws) {
    Nearest near =
        nearest.length == 0
            ? Nearest.NONE
            : Arrays.stream(nearest[mode.ordinal()]).reduce(Nearest.NONE, Nearest::or);
    Doubt doubt = new FailureDoubts(best.rods(), state).of(mode, near);
    Optional<FailurePlace> place =
        near.exists()
            ? Optional.of(
                new BarkPlaces(best.rods(), request.plan().frontAzimuth().orElse(0))
                    .place(near.span(), near.s(), near.side()))
            : Optional.empty();
    return new FailureRisk(
        mode,
        new FailureOdds(mode, doubt).of(draws),
        place,
        near.demand(),
        LimitSampler.range(near.limit(), doubt));
  }

  private Map<String, Range> tensions(List<Draws> draws) {
    Map<String, Range> out = new TreeMap<>();
    for (int n = 0; n < best.loads().lines().size(); n++) {
      int line = n;
      double[] pulls =
          draws.stream()
              .flatMapToDouble(
                  group -> Arrays.stream(group.tensions()).mapToDouble(row -> row[line]))
              .toArray();
      if (pulls.length > 0) {
        out.put(best.loads().lines().get(n).id(), LimitSampler.range(pulls));
      }
    }
    return out;
  }
}
