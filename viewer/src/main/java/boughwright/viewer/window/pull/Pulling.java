// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Spot;
import boughwright.physics.reach.Aim;
import boughwright.physics.reach.AnchorPlace;
import boughwright.physics.reach.AnchorSort;
import boughwright.physics.reach.Grab;
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
import java.util.Optional;
import java.util.Set;

/**
 * What is being pulled, from the grab until it is added or dropped. Belongs to the event thread.
 */
final class Pulling implements AutoCloseable {
  private final Workspace workspace;
  private final Canvas canvas;
  private final Trials trials;
  private final Follower follower;
  private final Proposing proposing;
  private final CoilSeeking wire;
  private final List<Runnable> listeners = new ArrayList<>();
  private Follower.Way way = Follower.Way.LINE;
  private Optional<Grab> grab = Optional.empty();
  private Optional<Proposing.Changing> changing = Optional.empty();
  private Optional<Draft> draft = Optional.empty();
  private Optional<Aim> aim = Optional.empty();
  private Optional<AnchorPlace> fixed = Optional.empty();
  private Optional<Plan> asked = Optional.empty();
  private Optional<Follower.Ground> ground = Optional.empty();
  private boolean settling;
  private String name = "";

  Pulling(Workspace workspace, Canvas canvas, Background background, Trials trials) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.trials = trials;
    proposing = new Proposing(workspace);
    wire = new CoilSeeking(background);
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

  Optional<Proposing.Changing> changing() {
    return changing;
  }

  /** The place that is pulled. */
  Optional<Spot> spot() {
    return grab.map(Grab::spot);
  }

  /** What there is to tie to, the nearest first. */
  List<AnchorPlace> anchors() {
    return ground.map(Follower.Ground::anchors).orElse(List.of());
  }

  /** Where the place is with nothing but the rest of the plan; empty while that is not known. */
  Optional<Point3> start() {
    return ground.map(Follower.Ground::start);
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
    return wire.isRunning();
  }

  /** Whether the hand has let go, and the best line is still looked for. */
  boolean isSettling() {
    return settling;
  }

  /** Takes hold of a place for a new line or coil. */
  void grab(Spot spot) {
    changing = Optional.empty();
    name = proposing.nextName();
    grab(
        Grab.anew(
            workspace.document().tree(),
            proposing.plan(),
            TrialSpecies.of(workspace.document().tree()),
            spot));
  }

  /** Takes hold of a line of the plan, to change it. */
  void change(Proposing.Changing line) {
    Plan plan = proposing.plan();
    changing = Optional.of(line);
    name = line.where().proposal();
    way = Follower.Way.LINE;
    grab(
        new Grab(
            workspace.document().tree(),
            plan.withProposals(line.kept(plan)),
            line.kept(plan),
            TrialSpecies.of(workspace.document().tree()),
            line.line().at(),
            Set.of(AnchorSort.values()),
            Optional.of(line.line())));
  }

  private void grab(Grab made) {
    stop();
    grab = Optional.of(made);
    draft = Optional.empty();
    aim = Optional.empty();
    fixed = Optional.empty();
    ground = Optional.empty();
    settling = false;
    follower.grab(
        made,
        way,
        known -> {
          ground = Optional.of(known);
          tell();
        });
    tell();
  }

  /** Shows a line of the plan that was taken hold of as it is. */
  void holdAsItIs() {
    changing.ifPresent(
        one -> {
          settling = true;
          follower.hold(one.line().hold());
        });
  }

  /** The hand moves. */
  void to(Aim target) {
    aim = Optional.of(target);
    follower.to(target);
  }

  /** The hand lets go, or a place was typed. */
  void settle(Aim target) {
    aim = Optional.of(target);
    settling = true;
    follower.settle(target);
    tell();
  }

  /** Holds the line as it was typed. */
  void hold(Hold hold) {
    follower.hold(hold);
  }

  /** Ties the line to an anchor a person chose; empty for the one that does best. */
  void fix(Optional<AnchorPlace> anchor) {
    fixed = anchor;
    follower.fix(anchor);
    aim.ifPresentOrElse(this::settle, this::tell);
  }

  /** Pulls with a line, or by hand for a coil, from now on. */
  void use(Follower.Way other) {
    if (way == other) {
      return;
    }
    way = other;
    Optional<Aim> target = aim;
    Optional<Spot> spot = spot();
    spot.ifPresentOrElse(this::grab, this::tell);
    target.ifPresent(this::settle);
  }

  private void took(Draft found) {
    draft = Optional.of(found);
    asked = Optional.empty();
    if (found.shown().outcome().holds()) {
      canvas.preview(Optional.of(Preview.ofHand(found.plan(), found.shown())));
    }
    if (found.settled()) {
      settling = false;
      aim = aim.or(() -> Optional.of(new Aim.At(found.comesTo())));
      if (way == Follower.Way.LINE || found.coil().isPresent()) {
        asked = planned(name);
        asked.ifPresent(trials::want);
      } else if (!found.isWithoutWire()) {
        wire.seek(grab.orElseThrow(), found, this::took);
      }
    }
    canvas.redraw();
    tell();
  }

  private void refused(String why) {
    settling = false;
    workspace.say(new Notice(Notice.Kind.CAUTION, why));
    draft = draft.map(one -> one.saying(why));
    tell();
  }

  /** The plan as it would be with what is pulled under a name; empty where nothing is. */
  Optional<Plan> planned(String as) {
    return subject(as).flatMap(proposing::planned);
  }

  private Optional<Proposing.Subject> subject(String as) {
    return draft
        .filter(Draft::isReady)
        .flatMap(Draft::proposal)
        .map(found -> new Proposing.Subject(found, changing, as));
  }

  /** Adds what is pulled to the plan, or changes its line; one step of undo. */
  boolean add(String as) {
    return subject(as).filter(proposing::add).isPresent();
  }

  /** Forgets what is pulled. */
  void drop() {
    stop();
    follower.letGo();
    grab = Optional.empty();
    draft = Optional.empty();
    changing = Optional.empty();
    aim = Optional.empty();
    fixed = Optional.empty();
    ground = Optional.empty();
    asked = Optional.empty();
    settling = false;
    canvas.preview(Optional.empty());
    canvas.redraw();
    tell();
  }

  private void stop() {
    wire.stop();
    asked.ifPresent(trials::drop);
    asked = Optional.empty();
  }

  @Override
  public void close() {
    stop();
    follower.close();
  }
}
