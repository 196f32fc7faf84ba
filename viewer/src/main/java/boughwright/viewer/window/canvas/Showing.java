// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.Capsules;
import boughwright.viewer.scene.LiveTree;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Palette;
import boughwright.viewer.scene.Pose;
import boughwright.viewer.scene.PoseStops;
import boughwright.viewer.scene.Shown;
import boughwright.viewer.scene.StagesView;
import boughwright.viewer.scene.StrainScale;
import boughwright.viewer.window.work.Answer;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which pose of the tree is shown, and with what. Belongs to the event thread. */
final class Showing {
  private final Workspace work;
  private final List<Runnable> listeners = new ArrayList<>();
  private final Map<Integer, Pose> poses = new HashMap<>();
  private LiveTree tree;
  private PoseStops stops = PoseStops.MEASURED;
  private double at;
  private boolean measured;
  private Optional<Stance> stance = Optional.empty();
  private Optional<PoseStops.Stop> left = Optional.empty();
  private Looks looks = Looks.USUAL;
  private Optional<Preview> preview = Optional.empty();
  private Shown coarse;
  private Shown fine;
  private Capsules capsules;
  private List<StagesView.Outline> stays;

  Showing(Workspace work) {
    this.work = work;
    takeTree();
    takeAnswer();
    work.listen(this::heard);
  }

  /** Asks to be told of every change of what is shown. */
  void listen(Runnable listener) {
    listeners.add(listener);
  }

  private void heard(Topic topic) {
    switch (topic) {
      case DOCUMENT, PLAN -> {
        preview = Optional.empty();
        takeTree();
        takeAnswer();
        changed();
      }
      case ANSWER -> {
        takeAnswer();
        changed();
      }
      case UNITS -> changed();
      case SELECTION -> {
        coarse = null;
        fine = null;
      }
      default -> {
        // The rest does not change the tree.
      }
    }
  }

  private void changed() {
    coarse = null;
    fine = null;
    capsules = null;
    stays = null;
    listeners.forEach(Runnable::run);
  }

  private void takeTree() {
    Optional<Plan> plan = plan();
    if (tree == null || !tree.fits(work.document().tree(), plan)) {
      tree = new LiveTree(work.document().tree(), plan);
      poses.clear();
    }
  }

  private void takeAnswer() {
    takeAnswer(chosen());
  }

  /** The stop that is shown, where there was a choice. */
  private Optional<PoseStops.Stop> chosen() {
    return stops.stops().size() > 1 ? Optional.of(stop()) : Optional.empty();
  }

  private void takeAnswer(Optional<PoseStops.Stop> chosen) {
    poses.clear();
    if (measured || stance.isPresent()) {
      stops = PoseStops.MEASURED;
      at = 0;
      return;
    }
    stops =
        work.answer()
            .filter(known -> !known.plan().proposals().isEmpty())
            .map(known -> PoseStops.of(known.trial(), known.course()))
            .orElse(PoseStops.MEASURED);
    at = chosen.map(this::find).orElseGet(() -> stops.find(PoseStops.Kind.BENT).orElse(0));
  }

  private int find(PoseStops.Stop like) {
    for (int n = 0; n < stops.stops().size(); n++) {
      PoseStops.Stop stop = stops.stops().get(n);
      if (stop.kind() == like.kind() && stop.name().equals(like.name())) {
        return n;
      }
    }
    return stops.find(like.kind()).orElse(stops.find(PoseStops.Kind.BENT).orElse(0));
  }

  /** Whether the tree is shown as measured whatever the plan. */
  boolean isMeasured() {
    return measured;
  }

  /** Shows the tree as measured: upright, uncut, not bent; or again as its plan has it. */
  void setMeasured(boolean on) {
    if (measured == on) {
      return;
    }
    if (on) {
      left = chosen();
    }
    measured = on;
    preview = Optional.empty();
    takeTree();
    takeAnswer(left);
    changed();
  }

  Optional<Stance> stance() {
    return stance;
  }

  /** Shows the tree not bent, standing in some way; or again as its plan has it. */
  void setStance(Optional<Stance> other) {
    if (stance.equals(other)) {
      return;
    }
    if (stance.isEmpty()) {
      left = chosen();
    }
    stance = other;
    preview = Optional.empty();
    takeTree();
    takeAnswer(left);
    changed();
  }

  LiveTree tree() {
    return tree;
  }

  PoseStops stops() {
    return stops;
  }

  /** Where between the stops the shown pose is: a whole number at a stop [1]. */
  double at() {
    return at;
  }

  /** Shows a pose at or between stops, counted from 0. */
  void setAt(double place) {
    double within = Math.min(stops.stops().size() - 1.0, Math.max(0, place));
    if (within != at) {
      at = within;
      changed();
    }
  }

  boolean isBetween() {
    return at != Math.rint(at);
  }

  /** The stop that is shown, or the nearer one of the two beside it. */
  PoseStops.Stop stop() {
    return stops.stops().get((int) Math.min(stops.stops().size() - 1.0, Math.round(at)));
  }

  Looks looks() {
    return looks;
  }

  void setLooks(Looks others) {
    if (!looks.equals(others)) {
      looks = others;
      changed();
    }
  }

  Optional<Preview> preview() {
    return preview;
  }

  void setPreview(Optional<Preview> other) {
    preview = other.filter(p -> !measured && stance.isEmpty() && p.trial().outcome().holds());
    Optional<Plan> plan = plan();
    if (!tree.fits(work.document().tree(), plan)) {
      takeTree();
    }
    changed();
  }

  private Optional<Plan> plan() {
    if (stance.isPresent()) {
      return stance.map(one -> one.of(work.plan()));
    }
    return measured ? Optional.empty() : preview.map(Preview::plan).or(work::plan);
  }

  /** What is drawn, fine for a tree that stands still. */
  Shown shown(boolean isFine) {
    if (coarse == null) {
      coarse = make();
      fine = coarse.with(true);
    }
    return isFine ? fine : coarse;
  }

  /** The same tree as measured, nothing done to it. */
  Shown before() {
    Shown now = shown(true);
    return new Shown(
        tree,
        Optional.empty(),
        Optional.empty(),
        tree.measured(),
        List.of(),
        now.visibility(),
        new Shown.Options(Optional.empty(), true, List.of(), now.options().ways()));
  }

  /** Why something else is shown than a person may expect, in a sentence; blank where not. */
  String remark() {
    if (measured) {
      return work.plan().isPresent() ? "The tree as measured, without its plan." : "";
    }
    if (stance.isPresent()) {
      return work.plan().filter(p -> !p.proposals().isEmpty()).isPresent()
          ? "The tree without the bends of its plan."
          : "";
    }
    Optional<Plan> plan = plan();
    if (isPreview()) {
      return preview.flatMap(Preview::told).map(told -> "Shown now: " + told + ".").orElse("");
    }
    if (stops.trouble().isPresent()) {
      return stops.trouble().get();
    }
    if (plan.isEmpty()) {
      return "There is no plan yet: the tree as measured.";
    }
    if (plan.get().proposals().isEmpty()) {
      return "This plan bends nothing yet: the tree as measured.";
    }
    return work.answer().isEmpty() ? "This plan is not tried yet: the tree as measured." : "";
  }

  /** The outlines of what stays of the bend, beside another pose that is shown. */
  List<StagesView.Outline> stays() {
    if (stays == null) {
      stays = looks.has(Looks.Extra.GHOSTS) && !isPreview() ? findStays() : List.of();
    }
    return stays;
  }

  private List<StagesView.Outline> findStays() {
    Optional<Integer> released = stops.find(PoseStops.Kind.RELEASED);
    if (released.isEmpty() || Math.abs(released.get() - at) < 1) {
      return List.of();
    }
    TrialResult result = stops.stops().get(released.get()).result().orElseThrow();
    return tree.outlines(result, shown(false).pose());
  }

  /** The wood that is shown, to be struck by lines of sight. */
  Capsules capsules() {
    return capsules(shown(false).pose());
  }

  private Capsules capsules(Pose pose) {
    if (capsules == null) {
      capsules = tree.capsules(pose);
    }
    return capsules;
  }

  /** The poses whose limbs the picture has to hold: that which is shown, and the measured one. */
  List<Capsules> all() {
    return List.of(tree.capsules(tree.measured()), capsules());
  }

  private Shown make() {
    Optional<TrialResult> trial =
        preview.map(Preview::trial).or(() -> isBetween() ? Optional.empty() : stop().result());
    boolean released = preview.isEmpty() && stop().kind() == PoseStops.Kind.RELEASED;
    Optional<Plan> drawn =
        plan()
            .map(p -> released ? p.withProposals(List.of()) : p)
            .map(p -> Seen.of(p, looks.visibility()));
    Optional<StrainScale> strain =
        scale().filter(s -> looks.has(Looks.Extra.STRAIN)).filter(s -> at > 0 || isPreview());
    Pose pose = preview.map(p -> tree.bent(p.trial())).orElseGet(this::pose);
    List<Mark.Note> notes = Notes.of(this, work, () -> capsules(pose));
    return new Shown(
        tree,
        drawn,
        trial,
        pose,
        looks.has(Looks.Extra.GHOSTS) ? ghosts() : List.of(),
        looks.visibility(),
        new Shown.Options(strain, false, notes, ways()));
  }

  private Set<Shown.Way> ways() {
    Set<Shown.Way> ways = EnumSet.noneOf(Shown.Way.class);
    if (looks.has(Looks.Extra.IN_LEAF)) {
      ways.add(Shown.Way.IN_LEAF);
    }
    if (stance.isPresent()) {
      ways.add(Shown.Way.LEVEL_CONTAINER);
    }
    return ways;
  }

  private boolean isPreview() {
    return preview.isPresent();
  }

  private Optional<StrainScale> scale() {
    Optional<TrialResult> trial =
        preview.map(Preview::trial).or(() -> work.answer().map(Answer::trial));
    return trial
        .filter(t -> t.outcome().holds())
        .map(t -> StrainScale.forPicture(t.peak().map(Peak::bendingStrain).orElse(0.0)));
  }

  private Pose pose() {
    int before = (int) Math.floor(at);
    return isBetween()
        ? LiveTree.between(pose(before), pose(before + 1), at - before)
        : pose(before);
  }

  private Pose pose(int stop) {
    return poses.computeIfAbsent(
        stop, n -> stops.stops().get(n).result().map(tree::bent).orElse(tree.measured()));
  }

  /** The other poses: those on the way, and that at the other end of the bend. */
  private List<Shown.Ghost> ghosts() {
    List<Shown.Ghost> ghosts = new ArrayList<>();
    if (at > 0 || isPreview()) {
      ghosts.add(new Shown.Ghost(tree.measured(), Optional.empty()));
    }
    if (isPreview()) {
      return ghosts;
    }
    int last = stops.find(PoseStops.Kind.BENT).orElse(0);
    for (int n = 1; n <= last; n++) {
      if (Math.abs(n - at) >= 1 || n == last && at != last) {
        ghosts.add(new Shown.Ghost(pose(n), Optional.of(Palette.stage(n - 1, Math.max(1, last)))));
      }
    }
    return ghosts;
  }
}
