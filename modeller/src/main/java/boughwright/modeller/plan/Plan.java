// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One whole proposal for the tree.
 *
 * @param id name within the document
 * @param frontAzimuth the azimuth from which the tree is to be seen [rad]
 * @param planting the planting angle
 * @param cuts places where the tree is cut; what lies beyond is gone
 * @param apex the segment that becomes the apex
 * @param proposals the bends
 * @param selfWeight whether the tree's own weight takes part
 * @param stance whether gravity acts on the tree as measured or as planted
 * @param clamp where the tree is held; empty for the trunk base
 * @param schedule when the bends are made and let go
 * @param extras fields of the file that this version does not know
 */
public record Plan(
    String id,
    OptionalDouble frontAzimuth,
    Optional<Planting> planting,
    List<Spot> cuts,
    Optional<String> apex,
    List<Proposal> proposals,
    boolean selfWeight,
    Stance stance,
    Optional<Spot> clamp,
    Schedule schedule,
    Map<String, Object> extras) {

  /** How the tree stands while it is bent. */
  public enum Stance {
    AS_MEASURED,
    PLANTED
  }

  /**
   * @throws IllegalArgumentException if two proposals, or two guy-lines, share an id
   */
  public Plan {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(frontAzimuth, "frontAzimuth");
    Objects.requireNonNull(planting, "planting");
    cuts = List.copyOf(cuts);
    Objects.requireNonNull(apex, "apex");
    proposals = List.copyOf(proposals);
    UniqueIds.require(proposals.stream().map(Proposal::id), "proposal");
    UniqueIds.require(
        proposals.stream().flatMap(proposal -> proposal.guyLines().stream()).map(GuyLine::id),
        "guy-line");
    Objects.requireNonNull(stance, "stance");
    UniqueIds.require(
        proposals.stream().flatMap(proposal -> proposal.handBends().stream()).map(HandBend::id),
        "hand bend");
    Objects.requireNonNull(clamp, "clamp");
    Objects.requireNonNull(schedule, "schedule");
    extras = Extras.copyOf(extras);
  }

  /** The same plan with other proposals. */
  public Plan withProposals(List<Proposal> others) {
    return new PlanDraft(this).proposals(others).build();
  }

  /** The same plan at other times. */
  public Plan withSchedule(Schedule other) {
    return new PlanDraft(this).schedule(other).build();
  }

  /**
   * A plan of its own that is like this one. Under another id it has no schedule: what was done
   * when was said of this one.
   */
  public Plan under(String otherId) {
    return otherId.equals(id)
        ? this
        : new PlanDraft(this).id(otherId).schedule(Schedule.UNSAID).build();
  }
}
