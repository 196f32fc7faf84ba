// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Strand;
import boughwright.modeller.plan.Tackle;
import boughwright.modeller.plan.Tightener;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.StrandTwist;
import boughwright.physics.trial.LineTrial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws guy-lines with what belongs to them. */
final class Guys {
  /** Pads of which no length is given are so long, over the radius of the branch; at least [1]. */
  private static final double USUAL_PAD = 1.6;

  private static final int PAD_STATIONS = 9;

  /** An anchor point of the tree's setting within this is the one meant [m]. */
  private static final double SAME_POINT = 1e-3;

  /** Of the line's length, a stick that turns its end stands so far from the pad [1]. */
  private static final double STICK_AT_END = 0.88;

  /** A lever is lashed on along so much of the branch, over its length beyond the place [1]. */
  private static final double LASHED = 0.6;

  private final Skeleton skeleton;
  private final Stand stand;
  private final Pose pose;
  private final double line;
  private final Fittings fittings;
  private final Pads pads;
  private final AnchorShapes anchors;
  private final List<Mesh> meshes = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();

  /** A line's two ends. */
  private record Span(Point3 pad, Point3 anchor) {
    Direction3 way() {
      return anchor.minus(pad).direction();
    }

    double length() {
      return pad.distance(anchor);
    }
  }

  /**
   * @param line radius that lines are drawn with at least [m]
   */
  Guys(Skeleton skeleton, Stand stand, Pose pose, double line) {
    this.skeleton = skeleton;
    this.stand = stand;
    this.pose = pose;
    this.line = line;
    fittings = new Fittings(line);
    pads = new Pads(1.5 * line, Palette.PAD);
    anchors = new AnchorShapes(line);
  }

  List<Mesh> meshes() {
    return meshes;
  }

  List<Mark> marks() {
    return marks;
  }

  void add(GuyLine guy, Optional<LineTrial> tried) {
    Point3 pad = tried.map(t -> stand.place(t.pad())).orElseGet(() -> pad(guy));
    Point3 anchor = tried.map(t -> stand.place(t.anchor())).orElseGet(() -> anchor(guy.anchor()));
    if (pad.distance(anchor) < 1e-6) {
      return;
    }
    Span span = new Span(pad, anchor);
    boolean slack = tried.map(LineTrial::slack).orElse(false);
    double before = span.length() + tried.map(LineTrial::shortening).orElse(0.0);
    meshes.addAll(strands(guy.tackle(), slack, before, span).meshes(pad, anchor));
    guy.tackle().tightener().ifPresent(tightener -> addTightener(tightener, span));
    addPads(guy, span);
    Optional<AnchorKind> kind = kind(guy);
    if (guy.anchor() instanceof Anchor.OnTree tie) {
      addSleeve(tie.spot(), usualPad(tie.spot()));
    } else {
      meshes.addAll(anchors.of(kind, anchor, span.way().opposite()));
    }
    List<String> words = tried.map(t -> Wording.guy(t, kind)).orElseGet(() -> planned(guy));
    marks.add(new Mark.Guy(pad, anchor, words));
  }

  /**
   * The strands of a line as it is now.
   *
   * @param before how far it spanned as measured [m]
   */
  private Strands strands(Tackle tackle, boolean slack, double before, Span span) {
    double least = tackle.strand().map(Strand::count).orElse(1) > 1 ? 0.75 * line : line;
    double radius = Math.max(least, tackle.strand().map(s -> s.gauge() / 2).orElse(0.0));
    Optional<Tightener.Twist> twist =
        tackle
            .tightener()
            .filter(Tightener.Twist.class::isInstance)
            .map(Tightener.Twist.class::cast);
    int count = tackle.strand().map(Strand::count).orElse(twist.isPresent() ? 2 : 1);
    if (twist.isEmpty()) {
      return new Strands(count, radius, 0, false, slack);
    }
    double turns = turns(tackle, twist.get(), before, span.length());
    return new Strands(count, radius, turns, twist.get().inMiddle(), slack);
  }

  /** Turns in all: those already in, and those that bring the line from one span to another. */
  static double turns(Tackle tackle, Tightener.Twist twist, double before, double now) {
    if (tackle.strand().isEmpty() || before <= now) {
      return twist.turnsIn();
    }
    double gauge = tackle.strand().get().gauge();
    return StrandTwist.spanning(before, gauge, twist.turnsIn(), twist.inMiddle()).turns(now);
  }

  private void addTightener(Tightener tightener, Span span) {
    if (tightener instanceof Tightener.Twist twist) {
      double at = twist.inMiddle() ? 0.5 : STICK_AT_END;
      meshes.add(fittings.stick(span.pad().toward(span.anchor(), at), span.way()));
    } else {
      Point3 middle = span.pad().toward(span.anchor(), 0.6);
      meshes.add(fittings.turnbuckle(middle, span.way(), 0.4 * span.length()));
    }
  }

  private void addPads(GuyLine guy, Span span) {
    if (guy.tackle().lever() > 0) {
      addLever(guy, span);
      return;
    }
    double length = guy.tackle().padLength().orElse(usualPad(guy.at()));
    if (guy.padRound().isEmpty()) {
      addSleeve(guy.at(), length);
      return;
    }
    double round = guy.padRound().getAsDouble();
    stations(guy.at(), length)
        .ifPresent(bark -> meshes.add(pads.patch(bark, outward(guy.at(), round, bark))));
  }

  private void addSleeve(Spot spot, double length) {
    stations(spot, length).ifPresent(bark -> meshes.add(pads.sleeve(bark)));
  }

  /** A rod from the bark to the line, lashed to the branch at two places. */
  private void addLever(GuyLine guy, Span span) {
    double beyond = guy.tackle().lever();
    double radius = Math.max(2 * line, 0.18 * radius(guy.at()));
    double length = skeleton.length(skeleton.indexOf(guy.at().segment()));
    double back = Math.max(0, guy.at().along() - LASHED * beyond / length);
    Spot inner = new Spot(guy.at().segment(), back);
    Axis axis = axis(inner);
    Vector3 pull = span.way().vector();
    Vector3 flat = pull.minus(axis.direction().times(pull.dot(axis.direction().vector())));
    Vector3 side = flat.norm() < 1e-6 ? axis.direction().anySquare().vector() : flat;
    Vector3 out = side.direction().times(radius(inner) + radius);
    meshes.add(Fittings.rod(axis.point().plus(out), span.pad(), radius));
    for (double part : new double[] {0.15, 0.85}) {
      Spot lashing = new Spot(guy.at().segment(), back + part * (guy.at().along() - back));
      addSleeve(lashing, 5 * line);
    }
  }

  private double usualPad(Spot spot) {
    return Math.min(Math.max(USUAL_PAD * radius(spot), 8 * line), 16 * line);
  }

  /**
   * The bark of a segment about a place, so far in all [m]; less where the segment ends, none
   * inside a parent.
   */
  private Optional<List<Station>> stations(Spot spot, double length) {
    double half = length / 2 / skeleton.length(skeleton.indexOf(spot.segment()));
    double from = Math.max(0, spot.along() - half);
    double to = Math.min(1, spot.along() + half);
    return BarkPath.of(skeleton, pose, new Spot(spot.segment(), from), new Spot(spot.segment(), to))
        .map(path -> path.spread(PAD_STATIONS));
  }

  /** From the axis to a place round the segment, carried along to the first station of a pad. */
  private Vector3 outward(Spot spot, double round, List<Station> stations) {
    Direction3 rest = skeleton.direction(skeleton.indexOf(spot.segment()));
    Direction3 side = stand.turn().turn(RoundAngle.direction(rest, round));
    return Rotation.between(stand.turn().turn(rest), stations.get(0).direction())
        .turn(side)
        .vector();
  }

  private Optional<AnchorKind> kind(GuyLine guy) {
    if (guy.tackle().anchorKind().isPresent() || !(guy.anchor() instanceof Anchor.Fixed fixed)) {
      return guy.tackle().anchorKind();
    }
    return skeleton.tree().setting().anchors().stream()
        .filter(point -> point.at().distance(fixed.point()) < SAME_POINT)
        .map(AnchorPoint::kind)
        .findFirst();
  }

  private static List<String> planned(GuyLine line) {
    String id = Wording.shortened(VisibleText.of(line.id()));
    if (line.hold() instanceof Hold.Tension tension) {
      return List.of(id + "  " + Wording.newtons(tension.newtons()) + " planned");
    }
    return List.of(id);
  }

  private Point3 pad(GuyLine guy) {
    Axis axis = axis(guy.at());
    return axis.point().plus(axis.direction().times(guy.tackle().lever()));
  }

  private Point3 anchor(Anchor anchor) {
    return anchor instanceof Anchor.Fixed fixed
        ? stand.place(fixed.point())
        : axis(((Anchor.OnTree) anchor).spot()).point();
  }

  private Axis axis(Spot spot) {
    return pose.at(skeleton.indexOf(spot.segment()), spot.along());
  }

  private double radius(Spot spot) {
    return Thickness.radius(skeleton.segment(skeleton.indexOf(spot.segment())), spot.along());
  }
}
