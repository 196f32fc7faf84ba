// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.review.Fault;
import boughwright.modeller.design.review.Review;
import boughwright.modeller.design.review.ReviewRules;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.grow.YearlyRing;
import boughwright.viewer.command.PictureOptions.Wanted;
import boughwright.viewer.picture.PrintedPicture;
import boughwright.viewer.scene.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Says what a grower would find amiss in the structure of a tree. */
@Command(
    name = "review",
    header = "Find faults in the structure of a tree, and say what can be done about each.",
    customSynopsis = {
      "java -jar boughwright.jar review FILE [--plan ID] [--front-deg A] [--style S]",
      "        [--limits L=V,L=V] [--picture OUT.png] [--size WxH]",
      "        [--remove N,N --add-to-plan ID] [--json]"
    },
    description = {
      "Looks for bar branches, whorls, swellings, crossing and parallel branches, branches",
      "inside a curve, straight stretches, reverse taper, branches too thick or too low,",
      "competing leaders, bare stretches, and what the chosen front does not want. Each",
      "with its place, its measure beside the limit, and what can be done: which wound a",
      "cut leaves, when it closes, what it takes of the foliage, what it does to the tree.",
      "Nothing in the file is changed, unless you ask for it with --add-to-plan."
    },
    footer = {
      "Example: java -jar boughwright.jar review hornbeam.tree.json --plan a",
      "                                    --picture review.png",
      "docs/user/review.md explains the answer and lists the limits."
    })
final class ReviewVerb extends Verb {
  @Mixin private TreeArgument tree;

  @Mixin private ReviewOptions options;

  ReviewVerb(Console console) {
    super(console);
  }

  @Override
  int act() throws InputException {
    Faults faults = new Faults();
    TreeArgument.Given given = tree.read(faults);
    Optional<Wanted> picture = options.pictures.read(options.picture, given.path(), faults);
    ReviewReading reading = new ReviewReading(options, faults);
    Optional<ReviewReading.Seen> seen = given.document().flatMap(reading::seen);
    Optional<ReviewRules> rules = given.document().map(reading::rules);
    ReviewKeeping keeping = new ReviewKeeping(options, faults);
    List<Integer> numbers = keeping.numbers(given.document());
    faults.throwIfAny();
    ReviewReading.Seen judged = seen.orElseThrow();
    Document document = given.document().orElseThrow();
    Optional<FrontPose> front = front(judged.plan());
    Review review = review(document, judged.plan(), front, rules.orElseThrow());
    Optional<Document> changed = keeping.changed(document, judged, keeping.cuts(review, numbers));
    if (picture.isPresent()) {
      PrintedPicture.review(pictured(document, judged, front, review), picture.get().pixels())
          .write(picture.get().file());
    }
    if (changed.isPresent()) {
      TreeFiles.write(changed.get(), given.path().orElseThrow());
    }
    ReviewAnswer answer =
        new ReviewAnswer(
            given.file().orElseThrow(),
            judged.isNamed() ? judged.plan() : Optional.empty(),
            front,
            review,
            YearlyRing.of(document.tree().setting()),
            new ReviewAnswer.Kept(
                picture.map(Wanted::name),
                changed.flatMap(one -> one.plan(options.addTo)),
                numbers));
    return answer(() -> ReviewJson.of(answer), () -> ReviewText.of(answer));
  }

  /** A plan that names no front has none. */
  private static Optional<FrontPose> front(Optional<Plan> plan) {
    if (plan.isEmpty() || plan.get().frontAzimuth().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        FrontPose.of(
            plan.get().frontAzimuth().getAsDouble(),
            plan.get().planting().orElse(new Planting(0, 0))));
  }

  private static Review review(
      Document document, Optional<Plan> plan, Optional<FrontPose> front, ReviewRules rules) {
    Skeleton skeleton = new Skeleton(document.tree());
    WoodLeft wood = new WoodLeft(new Cutting(skeleton, plan.map(Plan::cuts).orElse(List.of())));
    return Review.of(wood, TrunkLine.of(wood, plan.flatMap(Plan::apex)), front, rules);
  }

  private static PrintedPicture.Reviewed pictured(
      Document document, ReviewReading.Seen seen, Optional<FrontPose> front, Review review) {
    List<Mark.Flaw> flaws = new ArrayList<>();
    for (Fault fault : review.faults()) {
      flaws.add(new Mark.Flaw(fault.where().at(), flaws.size() + 1, ReviewWords.listed(fault)));
    }
    return new PrintedPicture.Reviewed(
        document,
        seen.isNamed() ? seen.plan() : Optional.empty(),
        seen.plan().map(plan -> plan.withProposals(List.of())),
        front.isPresent(),
        flaws,
        ReviewWords.count(review));
  }
}
