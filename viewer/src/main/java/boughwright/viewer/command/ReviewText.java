// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.review.Fault;
import boughwright.modeller.design.review.Measured;
import boughwright.modeller.design.review.NotJudged;
import boughwright.modeller.design.review.Review;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.VisibleText;
import boughwright.viewer.scene.FaultWords;
import boughwright.viewer.scene.FrontWords;
import boughwright.viewer.scene.Wording;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What a review found, for the person at the bench. */
final class ReviewText {
  private final ReviewAnswer answer;
  private final Review review;
  private final TextPage page = new TextPage();

  private ReviewText(ReviewAnswer answer) {
    this.answer = answer;
    review = answer.review();
  }

  static String of(ReviewAnswer answer) {
    return new ReviewText(answer).write();
  }

  private String write() {
    page.words(opening());
    page.title(
        answer.file().document().tree().name()
            + ", "
            + answer.plan().map(plan -> "plan " + plan.id()).orElse("as measured"));
    lookedAt();
    if (review.faults().size() > 1) {
      table();
    }
    RemedyText remedies = new RemedyText(answer);
    int number = 1;
    for (Fault fault : review.faults()) {
      fault(number++, fault, remedies);
    }
    notJudged();
    basis();
    kept();
    return page.toString();
  }

  private String opening() {
    String count = ReviewWords.count(review);
    return switch (review.faults().size()) {
      case 0 -> count + ", judged as " + FrontWords.style(review.rules().style()) + ".";
      case 1 -> count + ": " + FaultWords.name(review.faults().get(0).kind()) + ".";
      default -> count + "; what matters most comes first.";
    };
  }

  private String front() {
    return answer
        .front()
        .map(pose -> ", seen from azimuth " + Wording.azimuth(pose.azimuth()))
        .orElse("");
  }

  private void lookedAt() {
    Review.LookedAt looked = review.lookedAt();
    String others =
        looked.others() == 0
            ? ""
            : "; " + looked.others() + " not judged (dead, sacrifice, or a stub)";
    String twigs =
        looked.twigs() == 0 ? "" : "; " + counted(looked.twigs(), "twig", "twigs") + " left out";
    page.inner(
        "Judged as "
            + FrontWords.style(review.rules().style())
            + front()
            + ": the trunk line "
            + trunk(looked.trunk())
            + " and "
            + counted(looked.branches(), "branch", "branches")
            + twigs
            + others
            + ".");
  }

  private static String trunk(List<String> ids) {
    return VisibleText.of(
        ids.size() == 1 ? ids.get(0) : "from " + ids.get(0) + " to " + ids.get(ids.size() - 1));
  }

  private static String counted(int count, String one, String more) {
    return count + " " + (count == 1 ? one : more);
  }

  private void table() {
    page.blank();
    TextTable table = new TextTable(3).row("no", "fault", "where", "measure", "limit", "beyond");
    int number = 1;
    for (Fault fault : review.faults()) {
      Measured measure = fault.measure();
      table.row(
          String.valueOf(number++),
          FaultWords.name(fault.kind()),
          ReviewWords.segments(fault),
          FaultWords.value(measure.limit(), measure.value()),
          FaultWords.value(measure.limit(), measure.bound()),
          beyond(measure));
    }
    page.table(table);
  }

  private static String beyond(Measured measure) {
    long percent = Math.round(100 * measure.over());
    return percent == 0 ? "just" : percent + " %";
  }

  private void fault(int number, Fault fault, RemedyText remedies) {
    page.heading(number + "  " + ReviewWords.title(fault));
    page.inner(
        "Marked on "
            + FaultWords.place(fault.where().spot())
            + ", "
            + Shown.millimetres(fault.where().caliper())
            + " thick there.");
    fault.measures().forEach(measure -> page.inner(FaultWords.told(measure)));
    fault.options().forEach(remedy -> remedies.write(page, fault, remedy));
  }

  private void notJudged() {
    if (review.notJudged().isEmpty()) {
      return;
    }
    page.heading("Not judged");
    Map<NotJudged.Reason, List<String>> by = new EnumMap<>(NotJudged.Reason.class);
    for (NotJudged one : review.notJudged()) {
      by.computeIfAbsent(one.reason(), r -> new ArrayList<>()).add(FaultWords.name(one.kind()));
    }
    by.forEach(
        (reason, names) ->
            page.point(
                ReviewWords.capital(String.join(", ", names))
                    + ": "
                    + ReviewWords.reason(reason)
                    + "."));
  }

  private void basis() {
    page.heading("On what this rests");
    page.inner(
        "Rules of the trade have no source but practice, and the numbers set to them here are a"
            + " choice; --limits changes them. The order is by the caliper concerned and by how"
            + " far over the limit it is.");
    if (review.faults().isEmpty()) {
      return;
    }
    page.inner(
        "Foliage is not counted: each live end stands for as much as the wood that feeds it. The"
            + " middle of the wood is of wood alone. Cuts, stubs and hollows: common practice, no"
            + " source.");
    page.inner("How long a wound takes to close goes by its width; " + answer.ring().basis() + ".");
  }

  private void kept() {
    answer.kept().picture().ifPresent(name -> page.heading("Picture: " + name));
    answer.kept().plan().ifPresent(this::added);
  }

  private void added(Plan plan) {
    List<String> numbers = answer.kept().removed().stream().map(String::valueOf).toList();
    page.heading(
        "The cuts of "
            + (numbers.size() == 1 ? "fault " : "faults ")
            + String.join(", ", numbers)
            + " are in plan "
            + UsageFaults.quoted(plan.id())
            + " now.");
  }
}
