// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.PlanRules;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Schedule;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Stage;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Sound plans with everything a plan can hold. */
final class RandomPlans {
  private final Random random;

  RandomPlans(Random random) {
    this.random = random;
  }

  Document with(Document document) {
    Skeleton skeleton = new Skeleton(document.tree());
    List<Plan> plans = new ArrayList<>();
    for (int k = random.nextInt(3); k > 0; k--) {
      Plan plan = new PlanDraft("plan" + k).build();
      for (int tries = 0; tries < 14; tries++) {
        Plan more = more(skeleton, plan);
        plan = sound(skeleton, more) ? more : plan;
      }
      plans.add(plan);
    }
    return document.withPlans(plans);
  }

  private static boolean sound(Skeleton skeleton, Plan plan) {
    return PlanRules.findings(skeleton, plan).stream().noneMatch(Finding::isFault);
  }

  private Plan more(Skeleton skeleton, Plan plan) {
    PlanDraft draft = new PlanDraft(plan);
    int what = random.nextInt(11);
    switch (what) {
      case 0 -> draft.cuts(List.of(spot(skeleton)));
      case 1 -> draft.apex(Optional.of(spot(skeleton).segment()));
      case 2 -> draft.clamp(Optional.of(spot(skeleton)));
      case 3 -> {
        Schedule schedule =
            new Schedule(
                List.of(new Stage(0, 0.5), new Stage(86_400 * 14, 1)),
                OptionalDouble.of(86_400 * 200));
        draft
            .schedule(schedule)
            .planting(Optional.of(new Planting(0.1, 1.5)))
            .frontAzimuth(OptionalDouble.of(0.4));
      }
      default -> draft.proposals(proposals(skeleton, plan, what));
    }
    return draft.build();
  }

  private List<Proposal> proposals(Skeleton skeleton, Plan plan, int what) {
    List<Proposal> all = new ArrayList<>(plan.proposals());
    if (all.isEmpty() || random.nextInt(4) == 0) {
      all.add(ProposalEdits.empty("p" + (all.size() + 1), Optional.of(spot(skeleton).segment())));
    }
    int at = random.nextInt(all.size());
    ProposalDraft one = new ProposalDraft(all.get(at));
    String id = "n" + random.nextInt(1_000_000);
    switch (what) {
      case 4, 5 -> one.lines.add(line(skeleton, id));
      case 6 -> one.weights.add(new HungWeight(spot(skeleton), 0.2, Map.of()));
      case 7 -> one.coils.add(coil(skeleton));
      case 8 ->
          one.hands.add(
              new HandBend(
                  id, spot(skeleton), Direction3.ofAzimuth(random.nextDouble()), 0.02, Map.of()));
      default -> one.aids.add(aid(skeleton));
    }
    all.set(at, one.build());
    return all;
  }

  private Spot spot(Skeleton skeleton) {
    return new Spot(
        skeleton.segment(random.nextInt(skeleton.size())).id(),
        Math.round(random.nextDouble() * 20) / 20.0);
  }

  private GuyLine line(Skeleton skeleton, String id) {
    Anchor anchor =
        random.nextInt(3) == 0
            ? new Anchor.OnTree(spot(skeleton))
            : new Anchor.Fixed(new Point3(0.3 * random.nextDouble(), 0.4, -0.05));
    Hold hold = random.nextBoolean() ? new Hold.Tension(20) : new Hold.Shortening(0.01);
    OptionalDouble pad =
        random.nextBoolean() ? OptionalDouble.of(6 * random.nextDouble()) : OptionalDouble.empty();
    return new GuyLine(id, spot(skeleton), pad, anchor, hold, Map.of());
  }

  private Coil coil(Skeleton skeleton) {
    int outer = random.nextInt(skeleton.size());
    int inner = outer;
    for (int k = random.nextInt(3); k > 0 && skeleton.parent(inner) != Skeleton.NONE; k--) {
      inner = skeleton.parent(inner);
    }
    return new Coil(
        new Spot(skeleton.segment(inner).id(), 0.1),
        new Spot(skeleton.segment(outer).id(), 0.9),
        Material.ALUMINIUM,
        0.003,
        1,
        0.9,
        Hand.RIGHT,
        Map.of());
  }

  private Aid aid(Skeleton skeleton) {
    int segment = random.nextInt(skeleton.size());
    String id = skeleton.segment(segment).id();
    double thin = skeleton.segment(segment).caliperEnd();
    Aid.Kind kind = Aid.Kind.values()[random.nextInt(4)];
    boolean cut = kind == Aid.Kind.SLOT || kind == Aid.Kind.RELIEF_CUT;
    return new Aid(
        kind,
        id,
        0.1,
        0.9,
        cut ? OptionalDouble.of(1) : OptionalDouble.empty(),
        cut ? OptionalDouble.of(0.001) : OptionalDouble.empty(),
        kind == Aid.Kind.WRAP ? OptionalDouble.empty() : OptionalDouble.of(thin * 0.3),
        kind == Aid.Kind.RELIEF_CUT ? 1 + random.nextInt(6) : 1,
        Map.of());
  }
}
