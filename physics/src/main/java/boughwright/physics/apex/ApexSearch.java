// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.modeller.design.shape.CutFace;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Schedule;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.grow.CutTime;
import boughwright.physics.grow.Thickening;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.grow.Years;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.DrawnChoice;
import boughwright.physics.reach.Reach;
import boughwright.physics.reach.ReachRequest;
import boughwright.physics.reach.Reached;
import boughwright.physics.reach.Target;
import boughwright.physics.reach.Targets;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/** Tries every leader of a tree as its top. */
public final class ApexSearch {
  /**
   * A leader is believable from this part of the caliper below it: segments of a good trunk go down
   * by 0.6 to 0.9 (common practice, no source) [1].
   */
  public static final double BELIEVABLE = 0.6;

  private final ApexRequest request;
  private final Trying.Watch watch;
  private final BooleanSupplier stop;
  private final Skeleton skeleton;
  private final Leaders leaders;
  private final double baseCaliper;
  private final YearlyRing ring;
  private final CutTime time;

  private ApexSearch(ApexRequest request, Trying.Watch watch, BooleanSupplier stop) {
    this.request = request;
    this.watch = watch;
    this.stop = stop;
    skeleton = new Skeleton(request.tree());
    leaders = Leaders.of(skeleton, request.plan());
    baseCaliper = skeleton.caliper(skeleton.outward(0), 0);
    ring = YearlyRing.of(request.tree().setting());
    Said said = request.trying().said();
    time = CutTime.of(Optional.of(said.on()), said.over(request.tree().condition()).hemisphere());
  }

  /**
   * What could become the top. Leaders are tried beside one another; the answer does not depend on
   * the number of processors.
   *
   * @param watch told how many of the leaders were tried
   * @param stop asked often, from any thread; true ends the search
   * @throws CancellationException if the search was stopped
   */
  public static Apexes of(ApexRequest request, Trying.Watch watch, BooleanSupplier stop) {
    return new ApexSearch(request, watch, stop).search();
  }

  private Apexes search() {
    List<Leader> all = leaders.all();
    List<Leader> tried = all.subList(0, Math.min(request.most(), all.size()));
    watch.now("Bending " + tried.size() + (tried.size() == 1 ? " leader" : " leaders"));
    AtomicInteger done = new AtomicInteger();
    List<ApexOption> options =
        tried.parallelStream()
            .map(
                leader -> {
                  ApexOption option = option(leader);
                  watch.part((double) done.incrementAndGet() / tried.size());
                  return option;
                })
            .toList();
    Optional<Chop> chop = chop();
    List<double[]> costs = new ArrayList<>(options.stream().map(ApexOption::costs).toList());
    chop.ifPresent(one -> costs.add(one.costs()));
    List<Boolean> best = Pareto.of(costs);
    List<ApexOption> ranked = new ArrayList<>();
    for (int n = 0; n < options.size(); n++) {
      boolean offers = options.get(n).state() != ApexOption.State.CANNOT;
      ranked.add(options.get(n).with(offers && best.get(n)));
    }
    ranked.sort(RANK);
    boolean chopIsBest = chop.isPresent() && best.get(options.size());
    return new Apexes(
        ranked, chop, chopIsBest, leaders.height(), baseCaliper, all.size() - tried.size());
  }

  /** What stands over the base before what does not; then the sooner done, or the nearer. */
  private static final Comparator<ApexOption> RANK =
      Comparator.comparing(ApexOption::state)
          .thenComparingDouble(
              one ->
                  one.state().compareTo(ApexOption.State.REACHES) <= 0
                      ? one.years().likely()
                      : one.miss())
          .thenComparingDouble(one -> one.bent().map(ApexOption.Bent::breaking).orElse(0.0));

  private Optional<Chop> chop() {
    WoodLeft wood = new WoodLeft(new Cutting(skeleton, request.plan().cuts()));
    return Chop.of(skeleton, TrunkLine.of(wood, Optional.empty()), leaders::heightOf, time);
  }

  private ApexOption option(Leader leader) {
    goOn();
    Plan plan = plan(leader);
    Target.Upright target = target(leader, plan);
    TipStand now = stand(target, tipAsMeasured(leader), heading(leader));
    Optional<ApexOption.Bent> bent = Optional.empty();
    Optional<NoBend> why = Optional.empty();
    ApexOption.State state = ApexOption.State.STANDS;
    if (!now.isInLine(baseCaliper)) {
      ReachRequest wanted =
          new ReachRequest(
              request.tree(), plan, List.of(), request.species(), target, request.wishes());
      Reached reached = Reach.of(wanted, stop);
      why = reached.unreachable().map(found -> new NoBend(found, reached.refused()));
      bent = easiest(wanted, reached.choices()).map(one -> bent(wanted, one));
      state = state(bent);
    }
    return new ApexOption(
        leader,
        bent.map(one -> one.choice().plan()).orElse(plan),
        state,
        now,
        bent,
        why,
        leader.cuts().stream().map(cut -> WoundClosure.of(cut.width(), ring, time)).toList(),
        thickening(leader),
        false);
  }

  /** Of the choices that bring the tip over the base the one that pulls least; else the nearest. */
  private Optional<Choice> easiest(ReachRequest wanted, List<Choice> choices) {
    return choices.stream()
        .filter(one -> stand(wanted, one).isInLine(baseCaliper))
        .min(Comparator.comparingDouble(one -> pull(one.trial())))
        .or(() -> choices.stream().findFirst());
  }

  private static double pull(TrialResult trial) {
    return trial.lines().stream().mapToDouble(LineTrial::tension).max().orElse(0);
  }

  private ApexOption.State state(Optional<ApexOption.Bent> bent) {
    if (bent.isEmpty()) {
      return ApexOption.State.CANNOT;
    }
    boolean within = bent.get().breaking() <= request.wishes().mostRisk();
    return within && bent.get().then().isInLine(baseCaliper)
        ? ApexOption.State.REACHES
        : ApexOption.State.NEARER;
  }

  private Years thickening(Leader leader) {
    return leader
        .takeover()
        .map(step -> Thickening.toPart(step.thin(), step.thick(), BELIEVABLE, ring))
        .orElse(Years.NONE);
  }

  private Target.Upright target(Leader leader, Plan plan) {
    return (Target.Upright)
        new Targets(request.tree(), plan, request.species()).upright(leader.tip());
  }

  private ApexOption.Bent bent(ReachRequest wanted, Choice choice) {
    return drawn(wanted, choice, request.trying(), new Within());
  }

  private void goOn() {
    if (stop.getAsBoolean()) {
      throw new CancellationException("the search for a top was stopped");
    }
  }

  /** Watches one leader of several: what it tells is not told, but it can be stopped. */
  private final class Within implements Trying.Watch {
    @Override
    public void now(String what) {
      goOn();
    }

    @Override
    public void part(double done) {
      goOn();
    }
  }

  /** A choice with its risk drawn, eased where that is more than is allowed. */
  private static ApexOption.Bent drawn(
      ReachRequest wanted, Choice choice, Trying trying, Trying.Watch watch) {
    DrawnChoice<TrialResult> drawn =
        DrawnChoice.eased(
            wanted,
            choice,
            new DrawnChoice.Drawing<>() {
              @Override
              public TrialResult draw(Choice one, int easing) {
                return trying.drawn(trial(wanted, one), "the top", watch);
              }

              @Override
              public double risk(TrialResult trial) {
                return trial.risk().map(risk -> risk.breaking().p()).orElse(0.0);
              }
            });
    Choice kept = drawn.choice();
    TrialResult judged = trying.judged(trial(wanted, kept), drawn.drawn());
    return new ApexOption.Bent(wanted, kept, judged, stand(wanted, kept));
  }

  /** An option with the risk of its bend drawn otherwise, such as more often. */
  public static ApexOption drawn(ApexOption option, Trying trying, Trying.Watch watch) {
    return option
        .bent()
        .map(bent -> option.with(drawn(bent.request(), bent.choice(), trying, watch)))
        .orElse(option);
  }

  /** The plan of an option as it is tried. */
  public static TrialRequest trial(ApexRequest request, ApexOption option) {
    return option
        .bent()
        .map(bent -> trial(bent.request(), bent.choice()))
        .orElseGet(() -> TrialRequest.of(request.tree(), option.plan(), request.species()));
  }

  private static TrialRequest trial(ReachRequest wanted, Choice choice) {
    return TrialRequest.of(wanted.tree(), choice.plan(), wanted.species());
  }

  private Point3 tipAsMeasured(Leader leader) {
    return skeleton.end(skeleton.indexOf(leader.tip().segment()));
  }

  private Direction3 heading(Leader leader) {
    return skeleton.direction(skeleton.indexOf(leader.tip().segment()));
  }

  private static TipStand stand(ReachRequest wanted, Choice choice) {
    return stand((Target.Upright) wanted.target(), choice.comesTo(), choice.heads());
  }

  private static TipStand stand(Target.Upright target, Point3 at, Direction3 heads) {
    double height = at.minus(target.base()).dot(target.up().vector());
    return new TipStand(target.beside(at).norm(), target.up().angleTo(heads), height);
  }

  /** The plan's own cuts that are still there to make, and those that make way for a leader. */
  private Plan plan(Leader leader) {
    Plan plan = request.plan();
    List<Spot> cuts = new ArrayList<>();
    List<Spot> ours = leader.cuts().stream().map(CutFace::cut).toList();
    Cutting cutting = new Cutting(skeleton, ours);
    plan.cuts().stream().filter(cutting::holds).forEach(cuts::add);
    cuts.addAll(ours);
    return new PlanDraft(plan)
        .cuts(cuts)
        .apex(Optional.of(leader.tip().segment()))
        .proposals(List.of())
        .clamp(plan.clamp().filter(new Cutting(skeleton, cuts)::holds))
        .schedule(Schedule.UNSAID)
        .build();
  }
}
