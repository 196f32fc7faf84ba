// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Proposal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an aid does to a trial, and what it costs the tree.
 *
 * @param aid {@code wrap}, {@code slot}, {@code hollow}, {@code relief-cut} or {@code lever}
 * @param on segment id, or line id for a lever
 * @param without the trial without this aid, all else the same; empty where it finds no pose
 * @param with the trial with it; empty where it finds no pose
 * @param cuts the cuts of a relief cut, from the start of their stretch
 * @param says what it does, in words
 * @param price what it costs, in words
 */
public record AidEffect(
    String aid,
    String on,
    Optional<Figures> without,
    Optional<Figures> with,
    List<Cut> cuts,
    List<String> says,
    String price) {

  /**
   * What a trial comes to.
   *
   * @param pull greatest pull of a line, 0 without lines [N]
   * @param moved greatest movement of the end of a segment [m]
   * @param tensionStrain strain of the most stretched fibre [1]
   * @param crack the most that is used of the strain at which wood cracks, by the best guess; empty
   *     for wood without a limit [1]
   * @param split the same for splitting along the middle [1]
   */
  public record Figures(
      double pull,
      double moved,
      double tensionStrain,
      OptionalDouble crack,
      OptionalDouble split) {}

  /**
   * A relief cut in the bent pose.
   *
   * @param along fraction of the segment's length [1]
   * @param closed angle by which its sides have come together; less than 0 if it gapes [rad]
   * @param full angle at which its mouth is shut [rad]
   */
  public record Cut(double along, double closed, double full) {
    /** True if its sides press on each other. */
    public boolean isShut() {
      return closed >= full;
    }
  }

  public AidEffect {
    Objects.requireNonNull(aid, "aid");
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(without, "without");
    Objects.requireNonNull(with, "with");
    cuts = List.copyOf(cuts);
    says = List.copyOf(says);
    Objects.requireNonNull(price, "price");
  }

  /**
   * The effect of every aid and lever of the proposals of a request, each against the same request
   * without it. Each takes a trial of its own.
   */
  public static List<AidEffect> of(TrialRequest request) {
    List<AidEffect> effects = new ArrayList<>();
    AidTrial with = new AidTrial(request);
    for (Proposal proposal : request.proposals()) {
      for (Aid aid : proposal.aids()) {
        effects.add(AidWords.of(request, aid, with, without(request, aid)));
      }
      for (GuyLine line : proposal.guyLines()) {
        if (line.tackle().lever() > 0) {
          effects.add(AidWords.ofLever(line, with, unlevered(request, line)));
        }
      }
    }
    return effects;
  }

  private static AidTrial without(TrialRequest request, Aid aid) {
    return new AidTrial(
        request.changing(
            proposal ->
                proposal.withAids(
                    proposal.aids().stream().filter(other -> other != aid).toList())));
  }

  private static AidTrial unlevered(TrialRequest request, GuyLine line) {
    return new AidTrial(
        request.changing(
            proposal ->
                proposal.withLines(one -> one.id().equals(line.id()) ? one.withoutLever() : one)));
  }

  /** The word of an aid in files. */
  static String word(Aid.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
