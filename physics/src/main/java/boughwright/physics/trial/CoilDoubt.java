// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.WoodOverride;
import boughwright.physics.hold.WireMetal;
import boughwright.physics.wood.SegmentWood;
import boughwright.physics.wood.WoodPrior;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is not known when a coil holds a branch: how stiff its wood is, how strong the wire, and
 * whether it grips the bark. The corners taken of the first two together bound nine in ten, if they
 * count alike; the least has a coil that slips freely, the most one that cannot slip at all.
 */
final class CoilDoubt {
  /** Standard normal point of 95 %, shared between two that are independent: 1.645 / sqrt 2. */
  private static final double SHARE = 1 / Math.sqrt(2);

  private static final double NINE_IN_TEN = 1.6449;

  private final TrialRequest request;
  private final Skeleton skeleton;
  private final TrialWood best;

  CoilDoubt(TrialRequest request, Skeleton skeleton) {
    this.request = request;
    this.skeleton = skeleton;
    best = TrialWood.best(skeleton, request.species());
  }

  /** What lets the coil hold least. */
  Windings.Made least() {
    return new Windings.Made(wood(SHARE * NINE_IN_TEN), new Windings.Wire(weakWire(), false));
  }

  /** What lets it hold most. */
  Windings.Made most() {
    return new Windings.Made(wood(-SHARE * NINE_IN_TEN), new Windings.Wire(strongWire(), true));
  }

  private double weakWire() {
    return Math.pow(metals().stream().mapToDouble(one -> one.doubt().low()).min().orElse(1), SHARE);
  }

  private double strongWire() {
    return Math.pow(
        metals().stream().mapToDouble(one -> one.doubt().high()).max().orElse(1), SHARE);
  }

  /**
   * Spread of ln of the strength of wire, that of the metal known worst; 0 without coils. The wire
   * is taken to be of one batch.
   */
  static double wireSpread(List<Proposal> proposals) {
    return metals(proposals).stream()
        .mapToDouble(one -> Math.log(one.doubt().high() / one.doubt().low()) / (2 * NINE_IN_TEN))
        .max()
        .orElse(0);
  }

  private List<WireMetal> metals() {
    return metals(request.proposals());
  }

  private static List<WireMetal> metals(List<Proposal> proposals) {
    return proposals.stream()
        .map(Proposal::coils)
        .flatMap(List::stream)
        .map(Coil::metal)
        .map(WireMetal::of)
        .toList();
  }

  private TrialWood wood(double deviations) {
    List<SegmentWood> segments = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      SegmentWood wood = best.segments().get(i);
      double factor = Math.exp(deviations * spread(i));
      segments.add(
          new SegmentWood(
              factor * wood.moe(), factor * wood.shearModulus(), wood.yieldStrain(), wood.basis()));
    }
    return new TrialWood(segments, best.startReading(), best.endReading());
  }

  /** Spread of ln of a segment's modulus: less where it was given or found by a pull test. */
  private double spread(int i) {
    Optional<WoodOverride> own =
        skeleton.tree().overrideFor(skeleton.segment(i).id()).filter(one -> one.moe().isPresent());
    if (own.isPresent()) {
      return own.get().moeSpread().orElse(Beliefs.GIVEN_MOE_SPREAD);
    }
    return skeleton.tree().wood() instanceof TreeWood.Own
        ? Beliefs.GIVEN_MOE_SPREAD
        : WoodPrior.of(request.species()).moe().total();
  }
}
