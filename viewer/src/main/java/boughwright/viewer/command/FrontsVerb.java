// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.front.FrontDoubt;
import boughwright.modeller.design.front.FrontGauge;
import boughwright.modeller.design.front.FrontGrid;
import boughwright.modeller.design.front.FrontSearch;
import boughwright.modeller.design.front.FrontWatch;
import boughwright.modeller.design.front.Fronts;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.viewer.picture.PictureSize;
import boughwright.viewer.picture.PrintedPicture;
import boughwright.viewer.scene.FrontScene;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Finds the sides and planting angles from which a tree looks best. */
@Command(
    name = "fronts",
    header = "Find from which side, and at which planting angle, the tree looks best.",
    customSynopsis = {
      "java -jar boughwright.jar fronts FILE [--plan ID] [--style S]",
      "        [--eye-mm H] [--eye-distance-mm D] [--tilt-deg N] [--weights M=W,M=W]",
      "        [--container LxWxD] [--in-leaf] [--at AZ[,R,T]] [--picture OUT.png]",
      "        [--map OUT.png] [--roots OUT.png] [--size WxH] [--choice N]",
      "        [--add-to-plan ID] [--json]"
    },
    description = {
      "Turns the tree through every azimuth and tilt, measures what the trade looks for,",
      "and says which fronts are best by the weights of a style or your own: at most five",
      "that differ, each with its planting angle, its score of 100, and what speaks for it",
      "and against it beside the others. What counts how much is common practice, without",
      "a source: you decide. Nothing in the file is changed, unless you ask for it with",
      "--add-to-plan."
    },
    footer = {
      "Example: java -jar boughwright.jar fronts hornbeam.tree.json --plan a",
      "                                    --picture fronts.png",
      "docs/user/fronts.md explains the answer."
    })
final class FrontsVerb extends Verb {
  @Mixin private TreeArgument tree;

  @Mixin private FrontsOptions options;

  FrontsVerb(Console console) {
    super(console);
  }

  /** Where pictures are written, and how large. */
  private record Pictures(
      Optional<Path> fronts, Optional<Path> map, Optional<Path> roots, Optional<PictureSize> size) {
    PictureSize pixels() {
      return size.orElse(PictureSize.DEFAULT);
    }
  }

  @Override
  int act() throws InputException {
    Faults faults = new Faults();
    TreeArgument.Given given = tree.read(faults);
    Pictures pictures = pictures(given.path(), faults);
    FrontsReading reading = new FrontsReading(options, faults);
    Optional<FrontsAnswer.Asked> asked = reading.read(given.file());
    Optional<FrontPose> at = reading.at();
    alone(faults);
    int choice = choice(faults);
    if (options.addTo != null) {
      AddToPlan.isId(options.addTo, faults);
    }
    faults.throwIfAny();
    FrontsAnswer answer =
        at.isPresent()
            ? explained(asked.orElseThrow(), at.get(), pictures)
            : found(asked.orElseThrow(), pictures, choice, given.path().orElseThrow());
    return answer(() -> FrontsJson.of(answer), () -> FrontsText.of(answer));
  }

  private Pictures pictures(Optional<Path> file, Faults faults) {
    boolean none = options.picture == null && options.map == null && options.roots == null;
    if (options.pictures.isSizeGiven() && none) {
      faults.add(
          "--size", "no-picture", "there is no picture", "Add --picture OUT.png or --map OUT.png");
    }
    Optional<Path> fronts = PictureOptions.place(options.picture, file, faults);
    Optional<Path> map = PictureOptions.place(options.map, file, faults);
    if (fronts.isPresent() && fronts.equals(map)) {
      faults.add("--map", "one-name", "is the name of the other picture", "Give another name");
    }
    if (options.roots != null && options.at == null) {
      faults.add("--roots", "no-front", "there is no front to draw it of", "Add --at AZ[,R,T]");
    }
    Optional<Path> roots = PictureOptions.place(options.roots, file, faults);
    return new Pictures(fronts, map, roots, options.pictures.size(faults));
  }

  /** A front that is only explained is neither drawn nor kept. */
  private void alone(Faults faults) {
    boolean more = options.picture != null || options.map != null || options.addTo != null;
    if (options.at != null && more) {
      faults.add(
          "--at",
          "explained-only",
          "one front is explained, so that there is nothing to draw or keep",
          "Leave --at out, or leave out --picture, --map and --add-to-plan");
    }
  }

  private int choice(Faults faults) {
    if (options.choice != null && options.addTo == null) {
      faults.add("--choice", "nothing-done", "nothing is done with it", "Add --add-to-plan ID");
    }
    OptionValues.Range range =
        new OptionValues.Range("--choice", 1, Fronts.MOST, "the number of a front, such as 1");
    return (int) new OptionValues(faults).whole(options.choice, range, 1);
  }

  private static FrontsAnswer explained(FrontsAnswer.Asked asked, FrontPose at, Pictures pictures)
      throws InputException {
    FrontGauge gauge = asked.tree().gauge();
    if (pictures.roots().isPresent()) {
      FrontsGround.draw(asked, at, pictures.pixels()).write(pictures.roots().get());
    }
    return new FrontsAnswer(
        asked,
        Optional.empty(),
        Optional.of(asked.rules().score(gauge.read(at))),
        FrontsAnswer.Kept.explained(pictures.roots().map(Path::toString)));
  }

  private FrontsAnswer found(FrontsAnswer.Asked asked, Pictures pictures, int choice, Path file)
      throws InputException {
    FrontsAnswer.Found found;
    try (Progress progress = progress()) {
      found = search(asked, progress);
    }
    requireChoice(found, choice);
    Optional<Document> changed = changed(asked, found, choice);
    FrontsAnswer.Kept kept =
        new FrontsAnswer.Kept(
            choice,
            pictures.fronts().map(Path::toString),
            pictures.map().map(Path::toString),
            Optional.empty(),
            changed.flatMap(document -> document.plan(options.addTo)));
    FrontsAnswer answer = new FrontsAnswer(asked, Optional.of(found), Optional.empty(), kept);
    draw(answer, pictures);
    if (changed.isPresent()) {
      TreeFiles.write(changed.get(), file);
    }
    return answer;
  }

  private static FrontsAnswer.Found search(FrontsAnswer.Asked asked, Progress progress) {
    progress.now("Turning the tree");
    FrontWatch watch =
        new FrontWatch() {
          @Override
          public void part(double done) {
            progress.part(done);
          }

          @Override
          public boolean isStopped() {
            return Thread.currentThread().isInterrupted();
          }
        };
    Fronts fronts =
        new FrontSearch(asked.tree().gauge(), asked.rules(), FrontGrid.of(asked.range()))
            .run(watch)
            .orElseThrow(() -> new IllegalStateException("interrupted"));
    progress.now("Measuring again");
    return new FrontsAnswer.Found(fronts, FrontDoubt.of(asked.tree(), asked.rules(), fronts));
  }

  private void requireChoice(FrontsAnswer.Found found, int choice) throws InputException {
    if (options.addTo == null) {
      return;
    }
    if (!found.hasChoice()) {
      throw refused(
          "--add-to-plan",
          "no-front",
          "no side of this tree is better than another, as far as measuring can tell",
          "Leave it out, and choose a front yourself");
    }
    if (choice > found.fronts().fronts().size()) {
      throw refused(
          "--choice",
          "no-such-choice",
          "there are " + found.fronts().fronts().size() + " fronts",
          "Give a number up to that");
    }
  }

  private static InputException refused(String where, String kind, String what, String remedy) {
    return new InputException(Problem.fault(Place.of(where), kind, what, remedy));
  }

  private static void draw(FrontsAnswer answer, Pictures pictures) throws InputException {
    FrontsAnswer.Asked asked = answer.asked();
    Optional<PrintedPicture> fronts = Optional.empty();
    Optional<PrintedPicture> map = Optional.empty();
    if (pictures.fronts().isPresent()) {
      fronts =
          Optional.of(
              PrintedPicture.fronts(
                  new PrintedPicture.Subject(
                      asked.file().document(),
                      asked.plan(),
                      Optional.empty(),
                      asked.tree().inLeaf()),
                  FrontsPage.side(answer),
                  pictures.pixels()));
    }
    if (pictures.map().isPresent()) {
      map =
          Optional.of(
              PrintedPicture.frontMap(
                  answer.found().orElseThrow().fronts().map(),
                  FrontsPage.map(answer),
                  pictures.pixels()));
    }
    if (fronts.isPresent()) {
      fronts.get().write(pictures.fronts().orElseThrow());
    }
    if (map.isPresent()) {
      map.get().write(pictures.map().orElseThrow());
    }
  }

  /** The document with the chosen front in its plan, a new one like the one judged if need be. */
  private Optional<Document> changed(FrontsAnswer.Asked asked, FrontsAnswer.Found found, int choice)
      throws InputException {
    if (options.addTo == null) {
      return Optional.empty();
    }
    Document document = asked.file().document();
    if (document.plan(options.addTo).isEmpty()) {
      Plan like =
          new PlanDraft(options.addTo)
              .cuts(asked.plan().map(Plan::cuts).orElse(List.of()))
              .apex(asked.plan().flatMap(Plan::apex))
              .build();
      document = PlanEdits.add(like).of(document);
    }
    FrontPose pose = found.fronts().fronts().get(choice - 1).pose();
    return Optional.of(
        PlanEdits.standing(options.addTo, pose.azimuth(), FrontScene.planting(pose)).of(document));
  }
}
