// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.problem.NearNames;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Finding.Words;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Whether a plan fits its tree: every place is on a known segment and left by the cuts, and every
 * line has two ends outside the wood.
 *
 * <p>The rules are asked part by part, so that a caller can say where each part stands in a file;
 * the field of a finding is a field of the part asked about.
 */
public final class PlanRules {
  private static final int MOST_FOR_NEAR_NAMES = 300;

  private final Set<String> segments;
  private final Optional<Cutting> cutting;

  private PlanRules(Set<String> segments, Optional<Cutting> cutting) {
    this.segments = segments;
    this.cutting = cutting;
  }

  /** Rules for a tree of which only the ids are sound: they judge names, if there are any. */
  public static PlanRules ofNames(Set<String> segmentIds) {
    return new PlanRules(Set.copyOf(segmentIds), Optional.empty());
  }

  /** Rules for a tree and the cuts of one plan; cuts on unknown segments are passed over. */
  public static PlanRules of(Skeleton skeleton, List<Spot> cuts) {
    Set<String> ids = new HashSet<>();
    skeleton.tree().segments().forEach(segment -> ids.add(segment.id()));
    List<Spot> known = cuts.stream().filter(cut -> ids.contains(cut.segment())).toList();
    return new PlanRules(ids, Optional.of(new Cutting(skeleton, known)));
  }

  /** Everything wrong with a plan on a tree, each finding headed by the part it is about. */
  public static List<Finding> findings(Skeleton skeleton, Plan plan) {
    PlanRules rules = of(skeleton, plan.cuts());
    List<Finding> findings = new ArrayList<>(rules.cuts(plan.cuts()));
    plan.apex().ifPresent(apex -> findings.addAll(rules.apex(apex)));
    plan.clamp().ifPresent(clamp -> findings.addAll(rules.place(clamp, "clamp")));
    for (Proposal proposal : plan.proposals()) {
      proposal.about().ifPresent(about -> findings.addAll(rules.name(about, "about")));
      proposal.guyLines().forEach(line -> findings.addAll(rules.guyLine(line)));
      proposal.hungWeights().forEach(w -> findings.addAll(rules.place(w.at(), "segment")));
      proposal.coils().forEach(coil -> findings.addAll(rules.coil(coil)));
      proposal.handBends().forEach(hand -> findings.addAll(rules.place(hand.at(), "segment")));
      proposal.aids().forEach(aid -> findings.addAll(rules.aid(aid)));
    }
    return findings;
  }

  /** Whether the cuts leave a tree; cuts on unknown segments are judged by {@link #name}. */
  public List<Finding> cuts(List<Spot> cuts) {
    List<Finding> findings = new ArrayList<>();
    cuts.forEach(cut -> findings.addAll(name(cut.segment(), "segment")));
    if (cutting.isPresent() && cutting.get().isGone(cutting.get().skeleton().outward(0))) {
      findings.add(
          Finding.fault(
              List.of(),
              "cuts",
              new Words(
                  "nothing-left",
                  "the cuts take the whole tree, trunk base and all",
                  "Cut further out")));
    }
    return findings;
  }

  /** Whether an apex is a segment that the cuts leave. */
  public List<Finding> apex(String segment) {
    return place(new Spot(segment, 0), "apex");
  }

  /** Whether an id is that of a segment. */
  public List<Finding> name(String segment, String field) {
    if (segments.contains(segment) || segments.isEmpty()) {
      return List.of();
    }
    List<String> near =
        segments.size() > MOST_FOR_NEAR_NAMES ? List.of() : NearNames.of(segment, segments);
    return List.of(
        Finding.fault(
            List.of(segment),
            field,
            new Words(
                "unknown-segment",
                "\"" + segment + "\" is no segment of the tree",
                near.isEmpty()
                    ? "Name a segment of the tree"
                    : "Name a segment of the tree, such as " + String.join(" or ", near))));
  }

  /** Whether a place is on a segment that is known and not cut away there. */
  public List<Finding> place(Spot spot, String field) {
    List<Finding> unknown = name(spot.segment(), field);
    if (!unknown.isEmpty() || cutting.isEmpty() || cutting.get().holds(spot)) {
      return unknown;
    }
    Spot cut = cutting.get().cutThatTook(spot);
    return List.of(
        Finding.fault(
            List.of(spot.segment(), cut.segment()),
            field,
            new Words(
                "cut-away",
                String.format(
                    Locale.ROOT,
                    "the place at %s of \"%s\" is gone with the cut at %s of \"%s\"",
                    spot.along(),
                    spot.segment(),
                    cut.along(),
                    cut.segment()),
                "Choose a place the cut leaves, or cut further out")));
  }

  /** Whether a line has two ends that are places, apart, and outside the wood. */
  public List<Finding> guyLine(GuyLine line) {
    List<Finding> findings = new ArrayList<>(place(line.at(), "segment"));
    if (line.anchor() instanceof Anchor.OnTree onTree) {
      findings.addAll(place(onTree.spot(), "anchor"));
    }
    if (findings.isEmpty() && cutting.isPresent()) {
      findings.addAll(new LineRules(cutting.get(), line).findings());
    }
    return findings;
  }

  /** Whether a coil has two ends that are places, with wood from one to the other. */
  public List<Finding> coil(Coil coil) {
    List<Finding> findings = new ArrayList<>(place(coil.from(), "from"));
    findings.addAll(place(coil.to(), "to"));
    if (findings.isEmpty() && cutting.isPresent()) {
      findings.addAll(CoilRules.findings(cutting.get().skeleton(), coil));
    }
    return findings;
  }

  /** Whether an aid has a stretch that is there, and leaves wood to bend. */
  public List<Finding> aid(Aid aid) {
    List<Finding> findings = new ArrayList<>(name(aid.segment(), "segment"));
    if (findings.isEmpty()) {
      findings.addAll(place(new Spot(aid.segment(), aid.to()), "to"));
    }
    if (findings.isEmpty() && cutting.isPresent()) {
      findings.addAll(new AidRules(cutting.get().skeleton(), aid).findings());
    }
    return findings;
  }
}
