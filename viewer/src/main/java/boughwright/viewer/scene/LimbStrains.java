// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.FailurePlace;
import boughwright.physics.trial.FailureRisk;
import boughwright.physics.trial.LimitSample;
import boughwright.physics.trial.PathSample;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.SegmentTrial;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Lays the strains and limits of one limb out along it. */
final class LimbStrains {
  /** Wood that works less than this part of the hardest place is left out at the far end [1]. */
  private static final double IDLE = 0.01;

  private final Skeleton skeleton;
  private final Limb limb;
  private final TrialResult trial;
  private final Risk risk;
  private final double zero;

  private LimbStrains(Skeleton skeleton, Limb limb, TrialResult trial, Risk risk) {
    this.skeleton = skeleton;
    this.limb = limb;
    this.trial = trial;
    this.risk = risk;
    zero = hasUnion() ? skeleton.collar(limb.first()) : 0;
  }

  /** The limb that cracks first, or the one bent hardest; empty where nothing is bent. */
  static Optional<LimbStrain> of(Skeleton skeleton, List<Limb> limbs, TrialResult trial) {
    if (trial.risk().isEmpty() || trial.peak().isEmpty()) {
      return Optional.empty();
    }
    Risk risk = trial.risk().get();
    String id =
        risk.of(FailureMode.CRACK)
            .flatMap(FailureRisk::place)
            .map(FailurePlace::segment)
            .orElse(trial.peak().get().segment());
    int segment = skeleton.indexOf(id);
    return limbs.stream()
        .filter(limb -> limb.segments().contains(segment))
        .findFirst()
        .map(limb -> new LimbStrains(skeleton, limb, trial, risk).lay());
  }

  private boolean hasUnion() {
    return skeleton.parent(limb.first()) != Skeleton.NONE;
  }

  private LimbStrain lay() {
    List<LimbStrain.Fibres> strains = working(strains());
    double to = strains.isEmpty() ? 0 : strains.get(strains.size() - 1).at();
    return new LimbStrain(
        name(),
        hasUnion(),
        strains,
        limits().stream().filter(l -> l.at() <= to).toList(),
        places());
  }

  private String name() {
    String first = skeleton.segment(limb.first()).id();
    String last = skeleton.segment(limb.segments().get(limb.segments().size() - 1)).id();
    return VisibleText.of(first.equals(last) ? first : first + " to " + last);
  }

  /** Distance along the limb; empty if the segment is none of it. */
  private Optional<Double> at(String id, double along) {
    double from = -zero;
    for (int i : limb.segments()) {
      if (skeleton.segment(i).id().equals(id)) {
        return Optional.of(Math.max(0, from + along * skeleton.length(i)));
      }
      from += skeleton.length(i);
    }
    return Optional.empty();
  }

  private List<LimbStrain.Fibres> strains() {
    List<LimbStrain.Fibres> out = new ArrayList<>();
    for (int i : limb.segments()) {
      String id = skeleton.segment(i).id();
      Optional<SegmentTrial> segment = trial.segment(id);
      for (PathSample s : segment.map(SegmentTrial::samples).orElse(List.of())) {
        boolean buried = i == limb.first() && s.along() * skeleton.length(i) < zero - 1e-9;
        if (!buried) {
          out.add(
              new LimbStrain.Fibres(
                  at(id, s.along()).orElseThrow(), s.tensionStrain(), s.compressionStrain()));
        }
      }
    }
    Peak peak = trial.peak().orElseThrow();
    at(peak.segment(), peak.along())
        .ifPresent(
            x -> out.add(new LimbStrain.Fibres(x, peak.tensionStrain(), peak.compressionStrain())));
    out.sort(Comparator.comparingDouble(LimbStrain.Fibres::at));
    return out;
  }

  /** Up to the last place that works; one idle place more closes the curve. */
  private static List<LimbStrain.Fibres> working(List<LimbStrain.Fibres> all) {
    double most = all.stream().mapToDouble(LimbStrain.Fibres::tension).max().orElse(0);
    int last = all.size() - 1;
    while (last > 1 && all.get(last - 1).tension() < IDLE * most) {
      last--;
    }
    return all.subList(0, last + 1);
  }

  private List<LimbStrain.Limits> limits() {
    List<LimbStrain.Limits> out = new ArrayList<>();
    for (LimitSample limit : risk.limits()) {
      at(limit.segment(), limit.along())
          .ifPresent(
              x -> out.add(new LimbStrain.Limits(x, limit.crack(), limit.kink(), limit.yield())));
    }
    out.sort(Comparator.comparingDouble(LimbStrain.Limits::at));
    return out;
  }

  private List<LimbStrain.Place> places() {
    List<LimbStrain.Place> out = new ArrayList<>();
    for (FailureMode mode : List.of(FailureMode.CRACK, FailureMode.KINK)) {
      Optional<FailureRisk> failure = risk.of(mode);
      failure
          .flatMap(FailureRisk::place)
          .flatMap(place -> at(place.segment(), place.along()))
          .ifPresent(x -> out.add(new LimbStrain.Place(mode, x, failure.get().demand())));
    }
    return out;
  }
}
