// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.physics.reach.AnchorSort;
import boughwright.viewer.command.PictureOptions.Wanted;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options of verbs that look for lines: for which plan, tied to what, how tried, how drawn. */
final class SearchOptions {
  @Option(
      names = "--plan",
      paramLabel = "ID",
      order = 10,
      description = "Its cuts, clamp and planting angle count; its proposals do not.")
  private String plan;

  @Mixin private AnchorOption anchors;

  @Option(
      names = "--picture",
      paramLabel = "OUT.png",
      order = 20,
      description = "Draw the tree before and after the choice.")
  private String picture;

  @Mixin private PictureOptions pictures;

  @Mixin private TryingOptions trying;

  /** The id of the plan, where one is named. */
  Optional<String> planId() {
    return Optional.ofNullable(plan);
  }

  /**
   * The plan that is named.
   *
   * @param otherwise the id of the plan of which nothing is said, where none is named
   */
  Optional<Plan> plan(Document document, String otherwise, Faults faults) {
    return plan == null
        ? Optional.of(new PlanDraft(otherwise).build())
        : faults.tryTo(() -> PlanChoice.named(document, plan));
  }

  Set<AnchorSort> anchors(Faults faults) {
    return anchors.read(faults);
  }

  boolean asksPicture() {
    return picture != null;
  }

  Optional<Wanted> picture(Optional<Path> input, Faults faults) {
    return pictures.read(picture, input, faults);
  }

  TryingOptions.Search trying(Faults faults) {
    return trying.search(faults);
  }
}
