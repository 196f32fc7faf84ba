// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a grower would find amiss in a tree, and what can be done about it.
 *
 * @param rules by what it was judged
 * @param faults what was found, what matters most first
 * @param notJudged what was not looked for, and why
 * @param lookedAt what was looked at
 */
public record Review(
    ReviewRules rules, List<Fault> faults, List<NotJudged> notJudged, LookedAt lookedAt) {
  public Review {
    Objects.requireNonNull(rules, "rules");
    faults = List.copyOf(faults);
    notJudged = List.copyOf(notJudged);
    Objects.requireNonNull(lookedAt, "lookedAt");
  }

  /**
   * What was looked at.
   *
   * @param trunk ids of the trunk line, from base to apex
   * @param branches branches and leaders that were judged
   * @param twigs shoots that are thinner than what is judged
   * @param others shoots that are dead, stubs, or kept only to be removed
   */
  public record LookedAt(List<String> trunk, int branches, int twigs, int others) {
    public LookedAt {
      trunk = List.copyOf(trunk);
    }
  }

  /**
   * Judges what the cuts leave.
   *
   * @param wood the wood
   * @param trunk its trunk line
   * @param front how it stands before the viewer; without one it stands as measured, and what
   *     depends on the front is not judged
   * @param rules the rules
   */
  public static Review of(
      WoodLeft wood, TrunkLine trunk, Optional<FrontPose> front, ReviewRules rules) {
    Structure structure = new Structure(wood, trunk, front, rules);
    StraightStretches stretches = new StraightStretches(structure);
    Remedies remedies = new Remedies(structure);
    double base = structure.baseCaliper();
    List<Fault> faults =
        found(structure, stretches).stream()
            .map(
                one ->
                    new Fault(
                        one.kind(),
                        one.segments(),
                        one.where(),
                        one.measures(),
                        one.weight(base),
                        remedies.of(one)))
            .sorted(Comparator.comparingDouble(Fault::weight).reversed())
            .toList();
    return new Review(rules, faults, Judging.left(structure, stretches), lookedAt(structure));
  }

  private static List<Found> found(Structure structure, StraightStretches stretches) {
    List<Found> found = new ArrayList<>();
    Clusters clusters = new Clusters(structure);
    List<Found> swellings = clusters.swellings();
    found.addAll(new BarBranches(structure).find());
    found.addAll(clusters.whorls());
    found.addAll(swellings);
    List<Found> crossings = new Crossings(structure).find();
    found.addAll(crossings);
    found.addAll(new Parallels(structure).find(crossings));
    found.addAll(new Curves(structure).find());
    if (Judging.isMovementJudged(structure)) {
      found.addAll(stretches.find());
    }
    found.addAll(new ReverseTaper(structure).find(swellings));
    found.addAll(new Proportions(structure).find());
    found.addAll(new BareStretches(structure).find());
    found.addAll(new AgainstFront(structure).find());
    return found;
  }

  private static LookedAt lookedAt(Structure structure) {
    int branches = 0;
    int twigs = 0;
    for (Shoot shoot : structure.shoots()) {
      if (!shoot.isMain() && shoot.counts()) {
        branches += structure.isJudged(shoot) ? 1 : 0;
        twigs += structure.isTwig(shoot) ? 1 : 0;
      }
    }
    int others = structure.shoots().size() - 1 - branches - twigs;
    return new LookedAt(structure.main().line().ids(), branches, twigs, others);
  }
}
