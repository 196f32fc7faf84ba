// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Backdrop;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Leaves;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Wound;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Edits of every kind, some of which a document does not allow. */
public final class RandomEdits {
  /** Kinds of edits that are made. */
  public static final int KINDS = 23;

  private final Random random;

  public RandomEdits(Random random) {
    this.random = random;
  }

  /** An edit of any kind. */
  public Edit next(Document document) throws InputException {
    return next(document, random.nextInt(KINDS));
  }

  /** An edit of one kind. */
  public Edit next(Document document, int kind) throws InputException {
    Segment any = any(document.tree().segments());
    Segment other = any(document.tree().segments());
    return switch (kind) {
      case 0 -> add(document, any);
      case 1 -> SegmentEdits.split(any.id(), random.nextDouble(), "n" + random.nextInt(1 << 20));
      case 2 -> SegmentEdits.moveEnd(any.id(), near(any), SegmentEdits.Carry.WITH);
      case 3 -> SegmentEdits.moveEnd(any.id(), near(any), SegmentEdits.Carry.STAYS);
      case 4 -> BranchEdits.move(any.id(), other.id(), random.nextBoolean() ? 1 : 0.5);
      case 5 -> BranchEdits.delete(document, any.id());
      case 6 -> BranchEdits.mirror(any.id(), 6 * random.nextDouble());
      case 7 ->
          BranchEdits.duplicate(
              any.id(), new BranchEdits.BranchPlace(other.id(), 0.7), random.nextDouble());
      case 8 -> SegmentEdits.setCalipers(any.id(), any.caliperStart() * 1.1, any.caliperEnd());
      case 9 -> SegmentEdits.setKind(any.id(), Kind.values()[random.nextInt(5)]);
      case 10 -> SegmentEdits.rename(any.id(), "m" + random.nextInt(1 << 20));
      case 11 -> SegmentEdits.setJoint(any.id(), Joint.values()[random.nextInt(2)]);
      case 12 -> SegmentEdits.setBark(any.id(), OptionalDouble.of(0.0002));
      case 13 -> WoundEdits.add(wound(document, any));
      case 14 -> TreeEdits.name("tree " + random.nextInt(100));
      case 15 -> cells(any, other);
      case 16 -> BackdropEdits.add(backdrop());
      case 17 -> PlanEdits.add(new PlanDraft(PlanEdits.nextId(document)).build());
      case 18 -> plans(document);
      case 20 -> fronts(document);
      case 21 -> wishes();
      case 22 -> pad(document, any);
      default -> SegmentEdits.setLive(any.id(), Optional.of(random.nextBoolean()));
    };
  }

  private Edit add(Document document, Segment on) throws InputException {
    Joint joint = random.nextBoolean() ? Joint.CONTINUES : Joint.UNION;
    Kind kind = random.nextInt(4) > 0 ? on.kind() : Kind.BRANCH;
    return SegmentEdits.add(
        new NewSegment(
            NextId.segment(document, on.id(), kind, joint),
            new NewSegment.Place(on.id(), joint == Joint.CONTINUES ? 1 : 0.6, joint),
            kind,
            new Run.Heading(6 * random.nextDouble(), random.nextDouble(), 0.08),
            0.006,
            0.005));
  }

  private Run near(Segment segment) {
    Point3 end =
        segment
            .end()
            .plus(
                new Vector3(
                    0.04 * random.nextDouble() - 0.02,
                    0.04 * random.nextDouble() - 0.02,
                    0.04 * random.nextDouble() - 0.02));
    return new Run.To(end);
  }

  private Wound wound(Document document, Segment on) {
    return new Wound(
        WoundEdits.nextId(document),
        on.id(),
        random.nextDouble(),
        random.nextDouble(),
        0.01,
        0.01,
        Optional.empty(),
        Map.of());
  }

  private Edit pad(Document document, Segment on) throws InputException {
    List<Pad> all = document.tree().foliage().pads();
    String free = FoliageEdits.nextId(document);
    Pad pad = new Pad(free, on.id(), random.nextDouble(), 0.06, 0.04, 0.02, 0, Map.of());
    return switch (all.isEmpty() ? 0 : random.nextInt(4)) {
      case 1 -> FoliageEdits.change(any(all).id(), pad);
      case 2 -> FoliageEdits.delete(any(all).id());
      case 3 -> FoliageEdits.leaves(Optional.of(Leaves.DECIDUOUS));
      default -> FoliageEdits.add(pad);
    };
  }

  private Edit cells(Segment one, Segment other) {
    return TableEdits.setCells(
        List.of(
            new Cell.Row(
                one.id(),
                List.of(
                    new Cell.Azimuth(6 * random.nextDouble()),
                    new Cell.Length(0.05 + 0.1 * random.nextDouble()),
                    new Cell.Live(Optional.of(true)))),
            new Cell.Row(other.id(), List.of(new Cell.CaliperEnd(other.caliperEnd() * 0.95)))));
  }

  private Backdrop backdrop() {
    return new Backdrop(
        "front" + random.nextInt(100) + ".jpg",
        random.nextDouble(),
        random.nextBoolean() ? OptionalDouble.of(0.0004) : OptionalDouble.empty(),
        500,
        random.nextInt(900),
        0.6,
        Map.of());
  }

  private Edit plans(Document document) {
    if (document.plans().isEmpty()) {
      return PlanEdits.add(new PlanDraft("x").build());
    }
    Plan plan = any(document.plans());
    return switch (random.nextInt(5)) {
      case 0 -> PlanEdits.duplicate(plan.id(), PlanEdits.nextId(document));
      case 3 -> PlanEdits.standing(plan.id(), random.nextDouble(), planting());
      case 1 -> PlanEdits.front(plan.id(), OptionalDouble.of(random.nextDouble()));
      case 2 ->
          PlanEdits.addCut(
              plan.id(), new Spot(any(document.tree().segments()).id(), random.nextDouble()));
      default -> PlanEdits.rename(plan.id(), "r" + random.nextInt(1 << 20));
    };
  }

  private Optional<Planting> planting() {
    return random.nextBoolean()
        ? Optional.of(new Planting(random.nextDouble() - 0.5, -random.nextDouble()))
        : Optional.empty();
  }

  private Edit fronts(Document document) {
    List<MarkedFront> marked = document.fronts().marked();
    String id = marked.isEmpty() ? "f9" : any(marked).id();
    Optional<String> note = random.nextBoolean() ? Optional.of("note " + id) : Optional.empty();
    return switch (random.nextInt(4)) {
      case 0 ->
          FrontEdits.change(
              id, new MarkedFront("q" + random.nextInt(99), -0.0, planting(), note, Map.of()));
      case 1 -> FrontEdits.note(id, random.nextBoolean() ? " " : "seen at noon");
      case 2 -> FrontEdits.remove(id);
      default ->
          FrontEdits.mark(
              new MarkedFront(
                  FrontEdits.nextId(document), random.nextDouble(), planting(), note, Map.of()));
    };
  }

  private Edit wishes() {
    return switch (random.nextInt(5)) {
      case 0 -> FrontEdits.style(Optional.of(TreeStyle.values()[random.nextInt(6)]));
      case 1 -> FrontEdits.eyeHeight(OptionalDouble.of(random.nextDouble() - 0.2));
      case 2 -> FrontEdits.eyeDistance(OptionalDouble.of(random.nextDouble() + 0.1));
      case 3 -> FrontEdits.weightsOfStyle();
      default ->
          FrontEdits.weight(
              FrontMeasure.values()[random.nextInt(FrontMeasure.values().length)],
              random.nextInt(4) == 0
                  ? OptionalDouble.empty()
                  : OptionalDouble.of(3 * random.nextDouble()));
    };
  }

  private <T> T any(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  /** Where the axis of each segment starts and ends, by id. */
  public static Map<String, List<Point3>> ends(Document document) {
    Skeleton skeleton = new Skeleton(document.tree());
    Map<String, List<Point3>> ends = new java.util.HashMap<>();
    for (int i = 0; i < skeleton.size(); i++) {
      ends.put(skeleton.segment(i).id(), List.of(skeleton.start(i), skeleton.end(i)));
    }
    return ends;
  }
}
