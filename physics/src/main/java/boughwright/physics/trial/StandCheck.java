// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Standing;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.StandStability;
import boughwright.physics.hold.StandStability.Need;
import boughwright.physics.hold.StandStability.Pull;
import boughwright.physics.trial.HardwareFinding.Topic;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether lines tip or lift the container, or pull the root mass out of it. */
final class StandCheck {
  /** Mass over the mass that just holds [1]. Assumption. */
  private static final double SPARE = 1.5;

  /** Part of the whole mass that is root mass and tree [1]. Assumption. */
  private static final double OF_ROOTS = 0.8;

  /** An anchor so near outside the container's floor is part of it [m]. */
  private static final double WALL = 40e-3;

  /** A container a person may have in mind when none is given. */
  private static final Container USUAL =
      new Container(
          new Container.Size(0.4, 0.3, 0.1), 0, 0, 0, 0, OptionalDouble.empty(), false, Map.of());

  private final TrialRequest request;
  private final TrialResult result;
  private final Skeleton skeleton;
  private final List<Pull> outside = new ArrayList<>();
  private final List<Pull> inside = new ArrayList<>();

  StandCheck(TrialRequest request, TrialResult result, List<LineAtWork> lines, Skeleton skeleton) {
    this.request = request;
    this.result = result;
    this.skeleton = skeleton;
    lines.forEach(this::sort);
    for (Proposal proposal : request.proposals()) {
      proposal.hungWeights().forEach(this::hang);
    }
  }

  private Optional<Container> container() {
    return request.tree().setting().container();
  }

  private void sort(LineAtWork at) {
    if (at.line().anchor() instanceof Anchor.OnTree) {
      return;
    }
    Pull pull = new Pull(at.trial().pad(), at.toward().times(at.pull()));
    (isOfContainer(at) ? inside : outside).add(pull);
  }

  private boolean isOfContainer(LineAtWork at) {
    Optional<AnchorKind> kind = AnchorCheck.kind(at);
    Point3 point = at.trial().anchor();
    Container box = container().orElse(USUAL);
    boolean near =
        StandStability.isOver(box, point, WALL)
            && point.z() <= box.rim() + WALL
            && point.z() >= box.rim() - box.size().depth() - WALL;
    if (kind.isEmpty() || kind.get() == AnchorKind.PEG) {
      return near;
    }
    return kind.get() != AnchorKind.FRAME;
  }

  private void hang(HungWeight weight) {
    Optional<SegmentTrial> segment = result.segment(weight.at().segment());
    Point3 at =
        segment
            .flatMap(
                one ->
                    one.samples().stream()
                        .min(
                            Comparator.comparingDouble(
                                s -> Math.abs(s.along() - weight.at().along()))))
            .map(PathSample::point)
            .orElse(skeleton.point(skeleton.indexOf(weight.at().segment()), weight.at().along()));
    outside.add(new Pull(at, new Vector3(0, 0, -Standing.GRAVITY * weight.mass())));
  }

  List<HardwareFinding> findings() {
    List<HardwareFinding> out = new ArrayList<>();
    boolean ground =
        request.tree().setting().growing().where().filter(Growing.Where.GROUND::equals).isPresent();
    if (ground && container().isEmpty() || inside.isEmpty() && outside.isEmpty()) {
      return out;
    }
    if (!outside.isEmpty()) {
      out.add(container().map(this::stands).orElseGet(this::unknownContainer));
    }
    if (!inside.isEmpty()) {
      out.add(roots());
    }
    return out;
  }

  private HardwareFinding stands(Container box) {
    Need need = new StandStability(box, outside).need();
    if (need.mass() == 0) {
      return HardwareFinding.fine(
          Topic.STANDING, "Lines to the outside press the container down and do not tip it.");
    }
    String least =
        String.format(
            Locale.ROOT,
            "Lines to the outside: below %.1f kg the container %s",
            need.mass(),
            need.how());
    if (box.mass().isEmpty()) {
      return HardwareFinding.look(
          Topic.STANDING,
          least
              + String.format(
                  Locale.ROOT,
                  ". Weigh it, and load or fasten it if it has less than %.1f kg.",
                  SPARE * need.mass()));
    }
    double mass = box.mass().getAsDouble();
    String has = String.format(Locale.ROOT, "; it weighs %.1f kg", mass);
    if (mass <= need.mass()) {
      return HardwareFinding.no(
          Topic.STANDING, least + has + ". Fasten it down, or tie the lines to the container.");
    }
    return mass <= SPARE * need.mass()
        ? HardwareFinding.look(
            Topic.STANDING, least + has + ", which is little to spare: fasten it down.")
        : HardwareFinding.fine(Topic.STANDING, least + has + ".");
  }

  private HardwareFinding unknownContainer() {
    Need need = new StandStability(USUAL, outside).need();
    return HardwareFinding.look(
        Topic.STANDING,
        String.format(
            Locale.ROOT,
            "Lines to the outside pull the tree by its container. Give the container's sizes and"
                + " mass; one of 400 by 300 by 100 mm would have to weigh %.1f kg.",
            SPARE * need.mass()));
  }

  /** Lines tied to the container leave it in peace, and pull the root mass against it. */
  private HardwareFinding roots() {
    Container box = container().orElse(USUAL);
    List<Pull> all = new ArrayList<>(inside);
    all.addAll(outside);
    Need need = new StandStability(box, all).need();
    if (need.mass() == 0) {
      return HardwareFinding.fine(
          Topic.STANDING, "Lines to the container press the root mass down and do not tip it.");
    }
    String how = need.how().equals("lifts") ? "lifts out" : "tips";
    String least =
        String.format(
            Locale.ROOT,
            "Lines to the container: a root mass of less than %.1f kg, with its tree, %s of its"
                + " seat unless it is tied in",
            need.mass(),
            how.equals("tips") ? "tips out" : how);
    if (box.tiedIn()) {
      return HardwareFinding.fine(Topic.STANDING, least + "; it is tied in: look at those ties.");
    }
    double mass = OF_ROOTS * box.mass().orElse(Double.NaN);
    if (Double.isNaN(mass)) {
      return HardwareFinding.look(
          Topic.STANDING, least + ". Tie it to the container, or weigh it.");
    }
    return mass <= need.mass()
        ? HardwareFinding.no(Topic.STANDING, least + ": tie it to the container first.")
        : HardwareFinding.fine(
            Topic.STANDING, least + String.format(Locale.ROOT, "; it has about %.1f kg.", mass));
  }
}
