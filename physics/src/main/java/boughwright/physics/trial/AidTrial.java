// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.wood.WoodPrior;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A trial under the best guess of the wood, with what the effect of an aid is read from. */
final class AidTrial {
  private final Skeleton skeleton;
  private final Attempt attempt;
  private final Optional<TrialResult> result;
  private final WoodState state;

  AidTrial(TrialRequest request) {
    skeleton = new Skeleton(request.tree());
    attempt =
        Attempt.of(
            request.plan(),
            new Cutting(skeleton, request.plan().cuts()),
            request.proposals(),
            TrialWood.best(skeleton, request.species()),
            request.options());
    result = attempt.holds() ? Optional.of(new Trial(request, attempt).result()) : Optional.empty();
    state = new WoodState(skeleton, new Limbs(skeleton), WoodPrior.of(request.species()));
  }

  Optional<AidEffect.Figures> figures() {
    return result.map(this::figures);
  }

  private AidEffect.Figures figures(TrialResult found) {
    Nearest[][] nearest = FailureScan.of(attempt.rods(), attempt.solution().pose(), state);
    return new AidEffect.Figures(
        found.lines().stream().mapToDouble(LineTrial::tension).max().orElse(0),
        found.segments().stream()
            .mapToDouble(segment -> segment.endMoved(skeleton))
            .max()
            .orElse(0),
        found.segments().stream()
            .flatMap(segment -> segment.samples().stream())
            .mapToDouble(PathSample::tensionStrain)
            .max()
            .orElse(0),
        use(nearest, FailureMode.CRACK),
        use(nearest, FailureMode.SPLIT));
  }

  private static OptionalDouble use(Nearest[][] nearest, FailureMode mode) {
    return Arrays.stream(nearest[mode.ordinal()])
        .mapToDouble(Nearest::margin)
        .filter(margin -> margin > Double.NEGATIVE_INFINITY)
        .map(Math::exp)
        .max();
  }

  /** How far the cuts of a relief cut have come together. */
  List<AidEffect.Cut> cuts(Aid aid) {
    List<AidEffect.Cut> cuts = new ArrayList<>();
    if (result.isPresent()) {
      int i = skeleton.indexOf(aid.segment());
      for (double s : AidWork.cuts(skeleton, aid)) {
        double radius = attempt.rods().timber().woodRadius(i, s);
        cuts.add(new AidEffect.Cut(s / skeleton.length(i), closed(aid, i, s), full(aid, radius)));
      }
    }
    return cuts;
  }

  /**
   * Angle at which the mouth of a cut is shut: its width over the distance of its mouth from the
   * middle of what is left, round which the sides turn.
   */
  private static double full(Aid aid, double radius) {
    double depth = aid.depth().orElseThrow();
    double floor = radius - depth;
    double squared = radius * radius;
    double gone =
        squared * Math.acos(floor / radius)
            - floor * Math.sqrt(Math.max(0, squared - floor * floor));
    double first = 2.0 / 3 * Math.pow(Math.max(0, squared - floor * floor), 1.5);
    double middle = -first / (Math.PI * squared - gone);
    return aid.width().orElseThrow() / (radius - middle);
  }

  /** Turning round a cut, beyond that of the whole section, toward the cut's side [rad]. */
  private double closed(Aid aid, int i, double cut) {
    double far = aid.width().orElseThrow() / 2 + aid.depth().orElseThrow();
    double length = skeleton.length(i);
    List<PathSample> samples =
        result.orElseThrow().segment(aid.segment()).orElseThrow().samples().stream()
            .filter(sample -> Math.abs(sample.along() * length - cut) <= far * (1 + 1e-6))
            .toList();
    double turned = 0;
    for (int k = 0; k + 1 < samples.size(); k++) {
      PathSample a = samples.get(k);
      PathSample b = samples.get(k + 1);
      double step = (b.along() - a.along()) * length;
      turned += step * (extra(aid, i, a) + extra(aid, i, b)) / 2;
    }
    return turned;
  }

  /** Curvature beyond that of the whole section, positive where the cut closes [1/m]. */
  private double extra(Aid aid, int i, PathSample sample) {
    double radius = sample.radius();
    double moe = attempt.rods().timber().wood(i).moe();
    double whole = sample.moment() / (moe * Math.PI / 4 * Math.pow(radius, 4));
    Vector3 axis = sample.direction().vector();
    Vector3 side = RoundAngle.direction(skeleton.direction(i), aid.round().orElseThrow()).vector();
    Vector3 across = side.minus(axis.times(side.dot(axis)));
    if (!(across.norm() > 0)) {
      return 0;
    }
    double toward = -sample.tensionSide().dot(across) / across.norm();
    return toward * (sample.bendingStrain() / radius - whole);
  }
}
