// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Outcome;
import boughwright.physics.trial.PathSample;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.SegmentTrial;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Makes trial results by hand for tests of drawing: some segments are bent along arcs of given
 * curvature, and everything beyond is carried along. Not a computation of what wood does.
 */
public final class Bending {
  private static final int STEPS = 16;

  private final Skeleton skeleton;
  private final Map<String, Vector3> curvatures = new HashMap<>();
  private final Map<Integer, Turned[]> turned = new HashMap<>();

  private record Turned(Point3 point, Rotation turn) {}

  public Bending(Tree tree) {
    skeleton = new Skeleton(tree);
  }

  /** Bends a segment: turn per metre as a rotation vector in the measured pose [rad/m]. */
  public Bending bend(String segment, Vector3 curvature) {
    curvatures.put(segment, curvature);
    return this;
  }

  /** A trial whose pose holds. */
  public TrialResult result(Plan plan) {
    Cutting kept = new Cutting(skeleton, plan.cuts());
    List<SegmentTrial> trials = new ArrayList<>();
    for (int n = 0; n < skeleton.size(); n++) {
      int i = skeleton.outward(n);
      if (!kept.isGone(i)) {
        trials.add(trial(i, kept.left(i)));
      }
    }
    return new TrialResult(
        plan.id(),
        plan.proposals().stream().map(p -> p.id()).toList(),
        new Outcome(true, true, 0, ""),
        lines(plan),
        trials,
        peak(trials),
        "tension",
        new TrialResult.ErrorEstimate(0, 0, 0),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(
            "wood taken as straight-line elastic: no limit of the wood is considered in this pose",
            "own weight left out: the measured pose already includes the sag"));
  }

  /** A trial that found no pose. */
  public static TrialResult failed(Plan plan, Outcome outcome) {
    return new TrialResult(
        plan.id(),
        plan.proposals().stream().map(p -> p.id()).toList(),
        outcome,
        List.of(),
        List.of(),
        Optional.empty(),
        "tension",
        new TrialResult.ErrorEstimate(0, 0, 0),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of("wood taken as straight-line elastic"));
  }

  private SegmentTrial trial(int i, double upTo) {
    Segment segment = skeleton.segment(i);
    Vector3 curvature = curvatures.getOrDefault(segment.id(), Vector3.ZERO);
    Turned[] places = places(i, curvature);
    List<PathSample> samples = new ArrayList<>();
    for (int n = 0; n <= STEPS; n++) {
      double along = (double) n / STEPS;
      if (along <= upTo + 1e-9) {
        samples.add(
            sample(
                i, along, places[n], curvature.times((double) n / STEPS < stub(i) ? 0 : fade(n))));
      }
    }
    if (samples.get(samples.size() - 1).along() < upTo - 1e-9) {
      samples.add(between(i, upTo, places, curvature));
    }
    double strain = samples.stream().mapToDouble(PathSample::bendingStrain).max().orElse(0);
    PathSample first = samples.get(0);
    PathSample last = samples.get(samples.size() - 1);
    return new SegmentTrial(
        segment.id(),
        first.point(),
        last.point(),
        first.direction(),
        last.direction(),
        strain,
        0,
        0,
        0,
        samples);
  }

  private PathSample between(int i, double along, Turned[] places, Vector3 curvature) {
    int n = (int) (along * STEPS);
    double part = along * STEPS - n;
    Point3 point = places[n].point().toward(places[n + 1].point(), part);
    return sample(i, along, new Turned(point, places[n].turn()), curvature.times(fade(n)));
  }

  /** The share of a branch that lies inside its parent. */
  private double stub(int i) {
    if (skeleton.parent(i) == Skeleton.NONE || skeleton.joint(i) == Joint.CONTINUES) {
      return 0;
    }
    return Collar.of(skeleton, i).surface() / skeleton.length(i);
  }

  private Turned[] places(int i, Vector3 curvature) {
    Direction3 way = skeleton.direction(i);
    Turned at = start(i);
    Turned[] places = new Turned[STEPS + 1];
    places[0] = at;
    double step = skeleton.length(i) / STEPS;
    for (int n = 1; n <= STEPS; n++) {
      double fade = (n - 0.5) / STEPS < stub(i) ? 0 : fade(n - 0.5);
      Vector3 turn = at.turn().turn(curvature.times(step * fade));
      Rotation half = Rotation.ofVector(turn.times(0.5)).after(at.turn());
      Rotation full = Rotation.ofVector(turn).after(at.turn());
      at = new Turned(at.point().plus(half.turn(way).times(step)), full);
      places[n] = at;
    }
    turned.put(i, places);
    return places;
  }

  private static double fade(double n) {
    return 1 - 0.35 * n / STEPS;
  }

  private PathSample sample(int i, double along, Turned at, Vector3 curvature) {
    Segment segment = skeleton.segment(i);
    double radius = Thickness.radius(segment, along) - 0.0008;
    Direction3 way = at.turn().turn(skeleton.direction(i));
    Vector3 inward = at.turn().turn(curvature).cross(way.vector());
    Vector3 side = inward.norm() < 1e-9 ? Vector3.ZERO : inward.direction().vector().times(-1);
    double strain = radius * inward.norm();
    return new PathSample(along, at.point(), way, radius, strain, strain, strain, side, 0);
  }

  private Turned start(int i) {
    int parent = skeleton.parent(i);
    if (parent == Skeleton.NONE) {
      return new Turned(skeleton.start(i), Rotation.NONE);
    }
    double along = skeleton.segment(i).along();
    int n = (int) Math.floor(along * STEPS + 1e-9);
    Turned at = turned.get(parent)[n];
    double rest = (along - (double) n / STEPS) * skeleton.length(parent);
    return new Turned(
        at.point().plus(at.turn().turn(skeleton.direction(parent)).times(rest)), at.turn());
  }

  private Optional<Peak> peak(List<SegmentTrial> trials) {
    Peak peak = null;
    for (SegmentTrial trial : trials) {
      for (PathSample sample : trial.samples()) {
        if (sample.bendingStrain() > (peak == null ? 0 : peak.bendingStrain())) {
          int i = skeleton.indexOf(trial.segment());
          double fromBark = (sample.along() - stub(i)) * skeleton.length(i);
          peak =
              new Peak(
                  trial.segment(),
                  sample.along(),
                  stub(i) > 0 ? OptionalDouble.of(fromBark) : OptionalDouble.empty(),
                  0,
                  "right",
                  sample.bendingStrain(),
                  sample.tensionStrain(),
                  sample.compressionStrain(),
                  1);
        }
      }
    }
    return Optional.ofNullable(peak);
  }

  private List<LineTrial> lines(Plan plan) {
    List<LineTrial> lines = new ArrayList<>();
    plan.proposals()
        .forEach(proposal -> proposal.guyLines().forEach(line -> lines.add(line(line))));
    return lines;
  }

  private LineTrial line(GuyLine line) {
    Point3 pad = place(line.at());
    Point3 anchor =
        line.anchor() instanceof Anchor.Fixed fixed
            ? fixed.point()
            : place(((Anchor.OnTree) line.anchor()).spot());
    Point3 before = skeleton.point(skeleton.indexOf(line.at().segment()), line.at().along());
    double tension =
        line.hold() instanceof boughwright.modeller.plan.Hold.Tension t ? t.newtons() : 20;
    return new LineTrial(
        line.id(),
        tension,
        pad.distance(anchor),
        before.distance(anchor) - pad.distance(anchor),
        false,
        pad,
        anchor);
  }

  private Point3 place(Spot spot) {
    Turned[] places = turned.get(skeleton.indexOf(spot.segment()));
    int n = (int) Math.round(spot.along() * STEPS);
    return places[n].point();
  }

  /** The hedge tree's thinner leader drawn in, its first branch lowered. */
  public static TrialResult drawnIn(Tree tree, Plan plan) {
    return new Bending(tree)
        .bend("l1", new Vector3(0, -1.15, 0).times(3))
        .bend("l2", new Vector3(0, -1.0, 0).times(3.1))
        .bend("l3", new Vector3(0, -0.75, 0).times(3))
        .bend("l4", new Vector3(0, -0.3, 0).times(2))
        .bend("b1", new Vector3(0, -1.0, 0).times(2.2))
        .bend("b1b", new Vector3(0, -1.0, 0).times(2.0))
        .result(plan);
  }
}
