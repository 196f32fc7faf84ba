// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.PlanRules;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Schedule;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Finding.Words;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads one plan; what a plan must have to fit its tree is asked of {@link PlanRules}. */
final class PlanReader {
  private final ObjectReader object;
  private final Set<String> segmentIds;
  private final Optional<Skeleton> skeleton;

  private PlanReader(ObjectReader object, Set<String> segmentIds, Optional<Skeleton> skeleton) {
    this.object = object;
    this.segmentIds = segmentIds;
    this.skeleton = skeleton;
  }

  /**
   * All plans of a file that are sound.
   *
   * @param segmentIds ids of all segments
   * @param skeleton the tree, if it is sound; without it only names are judged
   */
  static List<Plan> plans(ObjectReader top, Set<String> segmentIds, Optional<Skeleton> skeleton) {
    List<Plan> plans = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Value.Fields fields : top.objects("plans", Limits.PLANS)) {
      ObjectReader object = SegmentReader.named(fields, "plan", top.problems());
      new PlanReader(object, segmentIds, skeleton).plan(ids).ifPresent(plans::add);
    }
    return plans;
  }

  private Optional<Plan> plan(Set<String> planIds) {
    String id = uniqueId(object, planIds, "plan");
    OptionalDouble front =
        object.numbers().optional("front_azimuth_deg", Quantity.DEGREES, Range.ANY);
    Optional<Planting> planting =
        object.object("planting", subject("planting")).flatMap(PlanReader::planting);
    List<ObjectReader> cutObjects =
        object.objects("cuts", Limits.SEGMENTS).stream()
            .map(fields -> new ObjectReader(fields, subject("cut"), object.problems()))
            .toList();
    List<Spot> cuts = cutObjects.stream().flatMap(cut -> spot(cut).stream()).toList();
    PlanRules rules = rules(cuts);
    judgeCuts(rules, cuts, cutObjects);
    Optional<String> apex = object.text("apex");
    apex.ifPresent(segment -> note(object, rules.apex(segment)));
    List<Proposal> proposals = proposals(rules);
    boolean selfWeight = object.flag("self_weight").orElse(false);
    Plan.Stance stance = object.choice("stance", Plan.Stance.class).orElse(Plan.Stance.AS_MEASURED);
    Optional<Spot> clamp = object.object("clamp", subject("clamp")).flatMap(PlanReader::spot);
    clamp.ifPresent(spot -> note(object, rules.place(spot, "clamp")));
    Schedule schedule = ScheduleReader.schedule(object);
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(
            new PlanDraft(id)
                .frontAzimuth(front)
                .planting(planting)
                .cuts(cuts)
                .apex(apex)
                .proposals(proposals)
                .selfWeight(selfWeight)
                .stance(stance)
                .clamp(clamp)
                .schedule(schedule)
                .extras(extras)
                .build())
        : Optional.empty();
  }

  private String subject(String part) {
    return object.subject() + " " + part;
  }

  private PlanRules rules(List<Spot> cuts) {
    return skeleton
        .map(tree -> PlanRules.of(tree, cuts))
        .orElseGet(() -> PlanRules.ofNames(segmentIds));
  }

  private void judgeCuts(PlanRules rules, List<Spot> cuts, List<ObjectReader> cutObjects) {
    if (cuts.size() == cutObjects.size()) {
      for (int c = 0; c < cuts.size(); c++) {
        note(cutObjects.get(c), rules.name(cuts.get(c).segment(), "segment"));
      }
    }
    note(object, rules.cuts(List.of()));
  }

  private List<Proposal> proposals(PlanRules rules) {
    List<Proposal> proposals = new ArrayList<>();
    Taken taken = new Taken(new HashSet<>(), new HashSet<>(), new HashSet<>());
    for (Value.Fields fields : object.objects("proposals", Limits.PLANS)) {
      ObjectReader one =
          new ObjectReader(
              fields, subject(SegmentReader.name(fields, "proposal")), object.problems());
      proposal(one, rules, taken).ifPresent(proposals::add);
    }
    return proposals;
  }

  /** Ids of the plan that are used already. */
  private record Taken(Set<String> proposals, Set<String> lines, Set<String> hands) {}

  private static Optional<Proposal> proposal(ObjectReader one, PlanRules rules, Taken taken) {
    String id = uniqueId(one, taken.proposals(), "proposal of this plan");
    Optional<String> about = one.text("about");
    about.ifPresent(segment -> note(one, rules.name(segment, "about")));
    LoadReader loads = new LoadReader(one, rules);
    var lines = loads.guyLines(taken.lines());
    var weights = loads.hungWeights();
    var coils = loads.coils();
    var hands = loads.handBends(taken.hands());
    var aids = loads.aids();
    Map<String, Object> extras = one.extras();
    return one.sound()
        ? Optional.of(new Proposal(id, about, lines, weights, coils, hands, aids, extras))
        : Optional.empty();
  }

  static Optional<Planting> planting(ObjectReader object) {
    double tilt = object.numbers().required("tilt_deg", Quantity.DEGREES, Range.ANY);
    double toward = object.numbers().required("toward_azimuth_deg", Quantity.DEGREES, Range.ANY);
    Map<String, Object> extras = object.extras();
    return object.sound() ? Optional.of(new Planting(tilt, toward, extras)) : Optional.empty();
  }

  /** A place on the tree, with its own unknown fields. */
  static Optional<Spot> spot(ObjectReader object) {
    String segment = object.id("segment");
    double along = object.numbers().along("along");
    Map<String, Object> extras = object.extras();
    return object.sound() ? Optional.of(new Spot(segment, along, extras)) : Optional.empty();
  }

  static String uniqueId(ObjectReader object, Set<String> taken, String what) {
    String id = object.id("id");
    if (!id.isEmpty() && !taken.add(id)) {
      object.fault(
          "id",
          "duplicate-id",
          "the id \"" + id + "\" is that of another " + what,
          "Give one of the two another id");
    }
    return id;
  }

  static void note(ObjectReader object, List<Finding> findings) {
    for (Finding finding : findings) {
      Words words = finding.words();
      object
          .problems()
          .add(finding.severity(), object.at(finding.field()), object.subject(), words);
    }
  }
}
