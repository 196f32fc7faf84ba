// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.CoilLine;
import boughwright.physics.hold.CoiledLine;
import boughwright.physics.hold.CoiledSection;
import boughwright.physics.rod.RodPlace;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.RodSection;
import boughwright.physics.rod.RodSpan;
import boughwright.physics.rod.SectionResponse;
import boughwright.physics.wood.FibreStrains;
import boughwright.physics.wood.FreedLine;
import boughwright.physics.wood.RememberedLine;
import boughwright.physics.wood.Spell;
import boughwright.physics.wood.WoodLine;
import boughwright.physics.wood.WoodSection;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * The tree as rods rooted at the place where it is held. Every span knows which stretch of which
 * segment it is and whether it runs against it; every place of the tree is a place on a span.
 */
final class TreeRods {
  private final Timber timber;
  private final Windings windings;
  private final Skeleton skeleton;
  private final RigidBodies bodies;
  private final int held;
  private final List<RodSpan> spans = new ArrayList<>();
  private final List<Run> runs = new ArrayList<>();
  private final List<List<CoilLine>> coils = new ArrayList<>();
  private final List<WoodLine> sections = new ArrayList<>();
  private final int[] spanEndingAt;
  private final int[] spanStartingAt;
  private final List<List<Integer>> runsOfSegment = new ArrayList<>();
  private final Point3 base;

  /**
   * Which stretch of the tree a span is.
   *
   * @param piece the stretch
   * @param reversed whether the span runs from the outer to the inner end
   * @param frame its section frame at rest, into the tree frame
   */
  record Run(RigidBodies.Piece piece, boolean reversed, Rotation frame) {
    /** Distance along the span of a place on the segment [m]. */
    double toSpan(double s) {
      double clamped = Math.min(Math.max(s, piece.from()), piece.to());
      return reversed ? piece.to() - clamped : clamped - piece.from();
    }

    /** Place on the segment of a distance along the span [m]. */
    double toSegment(double s) {
      return reversed ? piece.to() - s : piece.from() + s;
    }

    double startOnSegment() {
      return reversed ? piece.to() : piece.from();
    }

    double endOnSegment() {
      return reversed ? piece.from() : piece.to();
    }
  }

  /** A tree without coils. */
  TreeRods(Timber timber, Optional<Spot> clamp) {
    this(timber, clamp, Windings.NONE);
  }

  /**
   * A tree.
   *
   * @param timber its wood
   * @param clamp where it is held; empty for the trunk base
   * @param windings the coils on it
   */
  TreeRods(Timber timber, Optional<Spot> clamp, Windings windings) {
    this.timber = timber;
    this.windings = windings;
    skeleton = timber.skeleton();
    Map<Integer, List<Double>> extra = windings.ends();
    int baseSegment = skeleton.outward(0);
    int clampSegment = baseSegment;
    double clampAt = 0;
    if (clamp.isPresent()) {
      clampSegment = skeleton.indexOf(clamp.get().segment());
      clampAt = clamp.get().along() * skeleton.length(clampSegment);
      extra.computeIfAbsent(clampSegment, i -> new ArrayList<>()).add(clampAt);
    }
    bodies = new RigidBodies(timber, extra);
    held = bodies.bodyAt(clampSegment, clampAt);
    base = point(clampSegment, clampAt);
    spanEndingAt = new int[bodies.count()];
    spanStartingAt = new int[bodies.count()];
    Arrays.fill(spanEndingAt, -1);
    Arrays.fill(spanStartingAt, -1);
    for (int i = 0; i < skeleton.size(); i++) {
      runsOfSegment.add(new ArrayList<>());
    }
    grow();
  }

  private TreeRods(TreeRods before, Timber timber, List<WoodLine> sections) {
    this.timber = timber;
    windings = before.windings;
    skeleton = before.skeleton;
    bodies = before.bodies;
    held = before.held;
    base = before.base;
    spanEndingAt = before.spanEndingAt;
    spanStartingAt = before.spanStartingAt;
    runs.addAll(before.runs);
    coils.addAll(before.coils);
    runsOfSegment.addAll(before.runsOfSegment);
    this.sections.addAll(sections);
    for (int i = 0; i < before.spans.size(); i++) {
      RodSpan span = before.spans.get(i);
      spans.add(
          new RodSpan(
              span.parent(),
              span.offset(),
              span.turn(),
              span.length(),
              span.restCurvature(),
              sections.get(i)));
    }
  }

  /**
   * The same rods after they were held in a pose: their sections remember it.
   *
   * @param spell how long they were held, and what passed meanwhile; nothing grows on dead wood
   */
  TreeRods after(RodPose pose, Spell spell) {
    return with(i -> remembered(i, pose, spell));
  }

  /** The same rods after they went from one pose to another in a spell. */
  TreeRods between(RodPose from, RodPose to, Spell spell) {
    return with(i -> remembered(i, from, spell).moving(to));
  }

  private TreeRods with(IntFunction<WoodLine> section) {
    return new TreeRods(this, timber, IntStream.range(0, spans.size()).mapToObj(section).toList());
  }

  private RememberedLine remembered(int span, RodPose pose, Spell spell) {
    Spell here = grows(runs.get(span).piece().segment()) ? spell : spell.withoutRing();
    return new RememberedLine(sections.get(span), pose, span, here);
  }

  private boolean grows(int segment) {
    Segment wood = skeleton.segment(segment);
    return wood.kind() != Kind.DEADWOOD && wood.live().orElse(true);
  }

  /** The same rods for finding where they come to rest when nothing holds them for long. */
  TreeRods freed() {
    return with(i -> new FreedLine(sections.get(i)));
  }

  /** The same rods of other wood and wire, never bent before. */
  TreeRods of(Windings.Made of) {
    Timber other = timber.of(of.wood());
    List<WoodLine> made = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      List<CoilLine> on =
          coils.get(i).stream().map(coil -> coil.ofStrength(of.wire().strength())).toList();
      made.add(CoiledLine.of(sections(other, runs.get(i)), on));
    }
    return new TreeRods(this, other, made);
  }

  /** The same rods with a part of their coils left, 0 for none [1]. */
  TreeRods thinned(double part) {
    return with(i -> CoiledLine.thinned(sections.get(i), part));
  }

  /**
   * The same rods, whose coils were wound on in a pose that the tree without them is at rest in.
   */
  TreeRods woundIn(RodPose pose) {
    return with(i -> CoiledLine.woundIn(sections.get(i), pose, i));
  }

  /** True if some stretch that bends has a coil. */
  boolean isCoiled() {
    return coils.stream().anyMatch(some -> !some.isEmpty());
  }

  /** The coils on it. */
  Windings windings() {
    return windings;
  }

  private void grow() {
    List<List<RigidBodies.Piece>> at = new ArrayList<>();
    for (int b = 0; b < bodies.count(); b++) {
      at.add(new ArrayList<>());
    }
    for (RigidBodies.Piece piece : bodies.pieces()) {
      at.get(piece.inner()).add(piece);
      at.get(piece.outer()).add(piece);
    }
    boolean[] done = new boolean[bodies.count()];
    Deque<Integer> waiting = new ArrayDeque<>(List.of(held));
    done[held] = true;
    while (!waiting.isEmpty()) {
      int body = waiting.remove();
      for (RigidBodies.Piece piece : at.get(body)) {
        int other = piece.inner() == body ? piece.outer() : piece.inner();
        if (!done[other]) {
          done[other] = true;
          addSpan(piece, body, other);
          waiting.add(other);
        }
      }
    }
  }

  private void addSpan(RigidBodies.Piece piece, int body, int other) {
    boolean reversed = piece.outer() == body;
    Direction3 outward = skeleton.direction(piece.segment());
    Run run = new Run(piece, reversed, frame(reversed ? outward.opposite() : outward));
    int parent = spanEndingAt[body];
    Rotation parentFrame = parent < 0 ? Rotation.NONE : runs.get(parent).frame();
    Point3 parentEnd = parent < 0 ? base : end(runs.get(parent));
    Vector3 link = start(run).minus(parentEnd);
    Vector3 offset = link.norm() < 1e-12 ? Vector3.ZERO : parentFrame.inverse().turn(link);
    spanEndingAt[other] = spans.size();
    spanStartingAt[body] = spans.size();
    runsOfSegment.get(piece.segment()).add(spans.size());
    runs.add(run);
    coils.add(windings.on(timber, run));
    sections.add(CoiledLine.of(sections(timber, run), coils.get(coils.size() - 1)));
    spans.add(
        new RodSpan(
            parent,
            offset,
            parentFrame.inverse().after(run.frame()),
            piece.to() - piece.from(),
            Vector3.ZERO,
            sections.get(sections.size() - 1)));
  }

  private static WoodLine sections(Timber timber, Run run) {
    return timber.sections(
        run.piece().segment(), run.startOnSegment(), run.endOnSegment(), run.frame());
  }

  private static Rotation frame(Direction3 along) {
    Direction3 first = along.anySquare();
    return Rotation.toAxes(first, along.vector().cross(first.vector()).direction(), along);
  }

  private Point3 point(int i, double s) {
    return skeleton.start(i).plus(skeleton.direction(i).times(s));
  }

  private Point3 start(Run run) {
    return point(run.piece().segment(), run.startOnSegment());
  }

  private Point3 end(Run run) {
    return point(run.piece().segment(), run.endOnSegment());
  }

  /** Where a span ends at rest [m, tree frame]. */
  Point3 restEnd(int span) {
    return end(runs.get(span));
  }

  Timber timber() {
    return timber;
  }

  /** Where the tree is held [m, tree frame]. */
  Point3 base() {
    return base;
  }

  List<RodSpan> spans() {
    return spans;
  }

  Run run(int span) {
    return runs.get(span);
  }

  /** The section at a place of a span. */
  WoodSection section(int span, double s) {
    return sections.get(span).at(s);
  }

  /**
   * The moment that the wood carries at a place of a pose: all of it, but where a coil carries its
   * part [N m, section frame].
   */
  Vector3 woodMoment(int span, double s, RodSection section) {
    if (!(section(span, s) instanceof CoiledSection coiled)) {
      return section.moment();
    }
    SectionResponse wood = new SectionResponse();
    Vector3 strain = section.strain();
    coiled.wood().respond(strain.x(), strain.y(), strain.z(), wood);
    return new Vector3(wood.m1, wood.m2, wood.m3);
  }

  /** The bending part of {@link #woodMoment} [N m]. */
  double woodBending(int span, double s, RodSection section) {
    Vector3 moment = woodMoment(span, s, section);
    return Math.hypot(moment.x(), moment.y());
  }

  /** Strains of the outermost fibres at a place of a pose. */
  FibreStrains fibres(int span, double s, RodSection section) {
    return section(span, s).fibres(section.strain().x(), section.strain().y());
  }

  /** Spans of a segment, in no particular order. */
  List<Integer> spansOf(int segment) {
    return runsOfSegment.get(segment);
  }

  /** The span whose end moves with a rigid body, or -1 for the body that is held. */
  int spanOfBody(int segment, double s) {
    return spanEndingAt[bodies.bodyAt(segment, s)];
  }

  boolean isRigid(int segment, double s) {
    return bodies.isRigid(segment, s);
  }

  /** The span that a place which bends lies on, where two meet the one further out. */
  int spanAt(int segment, double s) {
    int best = -1;
    for (int span : runsOfSegment.get(segment)) {
      RigidBodies.Piece piece = runs.get(span).piece();
      if (s >= piece.from() - 1e-9 && s <= piece.to() + 1e-9) {
        best = best < 0 || piece.from() > runs.get(best).piece().from() ? span : best;
      }
    }
    return best;
  }

  /** True if a place cannot move. */
  boolean isHeld(int segment, double s) {
    return isRigid(segment, s) && bodies.bodyAt(segment, s) == held;
  }

  /**
   * A place of the tree, on the axis or beside it, as a place of the rods.
   *
   * @param segment segment index
   * @param s distance along the segment [m]
   * @param beside from the axis to the place, at rest [m, tree frame]
   */
  RodPlace place(int segment, double s, Vector3 beside) {
    if (!isRigid(segment, s)) {
      int span = spanAt(segment, s);
      return new RodPlace(
          span, runs.get(span).toSpan(s), runs.get(span).frame().inverse().turn(beside));
    }
    Point3 at = point(segment, s).plus(beside);
    int body = bodies.bodyAt(segment, s);
    int span = spanEndingAt[body];
    if (span >= 0) {
      Vector3 arm = runs.get(span).frame().inverse().turn(at.minus(end(runs.get(span))));
      return new RodPlace(span, spans.get(span).length(), tidy(arm));
    }
    int starting = spanStartingAt[body];
    Vector3 arm = runs.get(starting).frame().inverse().turn(at.minus(start(runs.get(starting))));
    return new RodPlace(starting, 0, tidy(arm));
  }

  private static Vector3 tidy(Vector3 arm) {
    return arm.norm() < 1e-12 ? Vector3.ZERO : arm;
  }
}
