// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.edit.BendEdits;
import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.ProposalEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.physics.reach.AnchorPlace;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.Grab;
import boughwright.physics.reach.LiveHand;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.Preview;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Trials;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is being pulled, from the grab until it is added or dropped. Belongs to the event thread.
 */
final class Pulling implements AutoCloseable {
  /** Metals that a coil is sought in. */
  private static final Set<Material> METALS = Set.of(Material.ALUMINIUM, Material.COPPER_ANNEALED);

  /** Most that breaking may risk while a coil is bent on, as when a place is to be reached [1]. */
  private static final double COIL_RISK = 0.05;

  private final Workspace workspace;
  private final Canvas canvas;
  private final Background background;
  private final Trials trials;
  private final Follower follower;
  private final List<Runnable> listeners = new ArrayList<>();
  private Follower.Way way = Follower.Way.LINE;
  private Optional<Grab> grab = Optional.empty();
  private Optional<Changing> changing = Optional.empty();
  private Optional<Draft> draft = Optional.empty();
  private Optional<AnchorPlace> fixed = Optional.empty();
  private Optional<Plan> asked = Optional.empty();
  private Optional<Background.Job> search = Optional.empty();
  private List<AnchorPlace> anchors = List.of();
  private String name = "";

  /** A line of the plan that is changed. */
  record Changing(ProposalEdits.Where where, GuyLine line) {}

  Pulling(Workspace workspace, Canvas canvas, Background background, Trials trials) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.background = background;
    this.trials = trials;
    follower = new Follower(this::took, this::refused);
    workspace.listen(
        topic -> {
          if (topic == Topic.DOCUMENT || topic == Topic.PLAN) {
            drop();
          }
        });
    trials.listen(this::tell);
  }

  void listen(Runnable listener) {
    listeners.add(listener);
  }

  private void tell() {
    List.copyOf(listeners).forEach(Runnable::run);
  }

  Follower.Way way() {
    return way;
  }

  Optional<Draft> draft() {
    return draft;
  }

  Optional<Changing> changing() {
    return changing;
  }

  /** The place that is pulled. */
  Optional<Spot> spot() {
    return grab.map(Grab::spot);
  }

  /** What there is to tie to, the nearest first. */
  List<AnchorPlace> anchors() {
    return anchors;
  }

  /** The anchor the person has chosen; empty for the one that does best. */
  Optional<AnchorPlace> fixed() {
    return fixed;
  }

  String name() {
    return name;
  }

  /** Everything that is told of the plan with what is pulled, once it is known. */
  Optional<Trying.Tried> full() {
    return asked.flatMap(trials::of);
  }

  boolean isJudging() {
    return asked.filter(trials::isTrying).isPresent();
  }

  boolean isSearching() {
    return search.filter(Background.Job::isRunning).isPresent();
  }

  /** Takes hold of a place for a new line or coil; false where the document has no plan. */
  boolean grab(Spot spot) {
    Optional<Plan> plan = workspace.plan();
    if (plan.isEmpty()) {
      workspace.say(
          new Notice(Notice.Kind.CAUTION, "There is no plan yet. Press New plan, then pull."));
      return false;
    }
    changing = Optional.empty();
    name = ProposalEdits.nextId(workspace.document(), plan.get().id());
    return grab(
        Grab.anew(
            workspace.document().tree(),
            plan.get(),
            TrialSpecies.of(workspace.document().tree()),
            spot));
  }

  /** Takes hold of a line of the plan, to change it. */
  boolean change(Changing line) {
    Plan plan = workspace.plan().orElseThrow();
    changing = Optional.of(line);
    name = line.where().proposal();
    way = Follower.Way.LINE;
    List<Proposal> kept =
        plan.proposals().stream()
            .map(one -> one.id().equals(line.where().proposal()) ? without(one, line.line()) : one)
            .toList();
    return grab(
        new Grab(
            workspace.document().tree(),
            plan.withProposals(kept),
            kept,
            TrialSpecies.of(workspace.document().tree()),
            line.line().at(),
            Set.of(boughwright.physics.reach.AnchorSort.values()),
            Optional.of(line.line())));
  }

  private static Proposal without(Proposal from, GuyLine line) {
    return new Proposal(
        from.id(),
        from.about(),
        from.guyLines().stream().filter(one -> !one.id().equals(line.id())).toList(),
        from.hungWeights(),
        from.coils(),
        from.handBends(),
        from.aids(),
        from.extras());
  }

  private boolean grab(Grab made) {
    stopSearch();
    grab = Optional.of(made);
    draft = Optional.empty();
    asked = Optional.empty();
    fixed = Optional.empty();
    anchors = List.of();
    follower.grab(made, way, fixed);
    follower.anchors(
        all -> {
          anchors = all;
          tell();
        });
    tell();
    return true;
  }

  /** The hand came to a place. */
  void to(Point3 target) {
    follower.to(target);
  }

  /** The hand lets go at a place. */
  void settle(Point3 target) {
    follower.settle(target);
  }

  /** Holds the line as it was typed. */
  void hold(Hold hold) {
    follower.hold(hold);
  }

  /** Ties the line to an anchor a person chose; empty for the one that does best. */
  void fix(Optional<AnchorPlace> anchor) {
    fixed = anchor;
    draft.ifPresent(one -> follower.fix(anchor, one.target()));
    tell();
  }

  /** Pulls with a line, or by hand for a coil, from now on. */
  void use(Follower.Way other) {
    if (way == other) {
      return;
    }
    way = other;
    Optional<Point3> target = draft.map(Draft::target);
    Optional<Spot> spot = spot();
    if (target.isPresent() && spot.isPresent() && grab(spot.get())) {
      settle(target.get());
    } else {
      tell();
    }
  }

  private void took(Draft found) {
    draft = Optional.of(found);
    asked = Optional.empty();
    if (found.trial().outcome().holds()) {
      canvas.preview(Optional.of(new Preview(found.plan(), found.trial())));
    }
    if (found.settled()) {
      judge(found);
      if (way == Follower.Way.COIL && found.coil().isEmpty()) {
        seek(found);
      }
    }
    canvas.redraw();
    tell();
  }

  private void judge(Draft found) {
    if (found.proposal().isPresent() && found.force().isEmpty() || found.coil().isPresent()) {
      asked = planned(name);
      asked.ifPresent(trials::want);
    }
  }

  private void seek(Draft found) {
    Grab from = grab.orElseThrow();
    search =
        Optional.of(
            background.start(
                "Looking for wire that holds it",
                progress -> LiveHand.coils(from, found.target(), METALS, COIL_RISK),
                all -> coiled(found, all)));
  }

  private void coiled(Draft found, List<Choice> all) {
    if (!draft.equals(Optional.of(found))) {
      return;
    }
    if (all.isEmpty()) {
      took(
          found.saying(
              "No wire that is sold holds it there within a risk of 1 in 20. Bend it less, or pull"
                  + " it with a line."),
          false);
    } else {
      took(Draft.of(found.target(), all.get(0)));
    }
  }

  private void took(Draft found, boolean judged) {
    draft = Optional.of(found);
    if (judged) {
      judge(found);
    }
    tell();
  }

  private void refused(String why) {
    workspace.say(new Notice(Notice.Kind.CAUTION, why));
    draft = draft.map(one -> one.saying(why));
    tell();
  }

  /** The plan as it would be with what is pulled under a name; empty where nothing is. */
  Optional<Plan> planned(String as) {
    Optional<Plan> plan = workspace.plan();
    Optional<Proposal> proposal = named(as);
    if (plan.isEmpty() || proposal.isEmpty()) {
      return Optional.empty();
    }
    List<Proposal> all = new ArrayList<>();
    if (changing.isPresent()) {
      GuyLine line = proposal.get().guyLines().get(0);
      for (Proposal one : plan.get().proposals()) {
        all.add(one.withLines(old -> old.id().equals(line.id()) ? line : old));
      }
    } else {
      all.addAll(plan.get().proposals());
      all.add(proposal.get());
    }
    try {
      return Optional.of(plan.get().withProposals(all));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** What is pulled as a proposal under a name, its line and hand named as the plan goes on. */
  private Optional<Proposal> named(String as) {
    Optional<Proposal> found = draft.flatMap(Draft::proposal);
    Optional<Plan> plan = workspace.plan();
    if (changing.isPresent() || found.isEmpty() || plan.isEmpty()) {
      return found;
    }
    Proposal from = found.get();
    String line = ProposalEdits.nextLineId(workspace.document(), plan.get().id());
    String hand = ProposalEdits.nextHandId(workspace.document(), plan.get().id());
    return Optional.of(
        new Proposal(
            as,
            from.about(),
            from.guyLines().stream().map(one -> named(one, line)).toList(),
            from.hungWeights(),
            from.coils(),
            from.handBends().stream()
                .map(one -> new HandBend(hand, one.at(), one.direction(), one.move(), Map.of()))
                .toList(),
            from.aids(),
            from.extras()));
  }

  private static GuyLine named(GuyLine line, String id) {
    return new GuyLine(
        id, line.at(), line.padRound(), line.anchor(), line.hold(), line.tackle(), line.extras());
  }

  /** Adds what is pulled to the plan, or changes its line; one step of undo. */
  boolean add(String as) {
    Optional<Proposal> proposal = named(as);
    if (proposal.isEmpty() || draft.filter(Draft::settled).isEmpty()) {
      return false;
    }
    Edit edit =
        changing
            .map(
                one ->
                    BendEdits.changeLine(
                        one.where(), one.line().id(), proposal.get().guyLines().get(0)))
            .orElseGet(
                () -> ProposalEdits.add(workspace.plan().orElseThrow().id(), proposal.get()));
    return workspace.edit(edit);
  }

  /** Forgets what is pulled. */
  void drop() {
    stopSearch();
    follower.letGo();
    grab = Optional.empty();
    draft = Optional.empty();
    changing = Optional.empty();
    fixed = Optional.empty();
    anchors = List.of();
    asked = Optional.empty();
    canvas.preview(Optional.empty());
    canvas.redraw();
    tell();
  }

  private void stopSearch() {
    search.ifPresent(Background.Job::cancel);
    search = Optional.empty();
    asked.ifPresent(trials::drop);
  }

  @Override
  public void close() {
    stopSearch();
    follower.close();
  }
}
