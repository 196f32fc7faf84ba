// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.command.PictureOptions.Wanted;
import boughwright.viewer.picture.PictureSize;
import boughwright.viewer.picture.PrintedPicture;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.window.shell.Start;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Opens the window on a tree, or draws one view of it. */
@Command(
    name = "view",
    header = "Open the window on a tree, or draw it as a picture.",
    customSynopsis = {
      "java -jar boughwright.jar view FILE [--plan ID]",
      "java -jar boughwright.jar view FILE --screenshot OUT.png [--size WxH]",
      "                            [--plan ID] [--front DEGREES] [--in-leaf] [--json]",
      "        [--samples N] [--seed N] [--no-risk] [--on DATE] [--frost]",
      "        [--hemisphere north|south] [--months-since-repotting N]",
      "        [--months-since-collecting N] [--months-since-hard-work N]"
    },
    description = {
      "Opens the window on the tree. With --screenshot it draws one picture instead,",
      "without a display: without --plan the tree stands as it was measured; with it,",
      "cut, bent and planted as planned, with the verdict and what it risks."
    },
    footer = {
      "Example: java -jar boughwright.jar view larch.tree.json --screenshot larch.png",
      "                                    --plan a --front 330"
    })
final class ViewVerb extends Verb {
  @Mixin private TreeArgument tree;

  @Option(
      names = "--screenshot",
      paramLabel = "OUT.png",
      order = 20,
      description = "The picture to write.")
  private String screenshot;

  @Mixin private PictureOptions pictures;

  @Option(
      names = "--plan",
      paramLabel = "ID",
      order = 22,
      description = "Show this plan, its proposals tried.")
  private String plan;

  @Option(
      names = "--front",
      paramLabel = "DEGREES",
      order = 23,
      description = {
        "Azimuth to look from: 0 is where the viewer stood when measuring, 90 the",
        "viewer's left. By default the front of the plan, else 0."
      })
  private String front;

  @Option(
      names = "--in-leaf",
      order = 24,
      description = {"Show the tree in leaf: the pads of the file, or a guess where it has none."})
  private boolean inLeaf;

  @Mixin private Sampling sampling;

  @Mixin private OccasionOptions occasion;

  private final WindowOpener opener;

  ViewVerb(Console console, WindowOpener opener) {
    super(console);
    this.opener = opener;
  }

  @Override
  int act() throws InputException {
    return screenshot == null ? openWindow() : drawPicture();
  }

  private int openWindow() throws InputException {
    Faults faults = new Faults();
    TreeArgument.Given given = tree.read(faults);
    if (!opener.hasDisplay()) {
      faults.add(
          "view",
          "no-display",
          "there is no display to open a window on",
          "Add --screenshot OUT.png for a picture, or start it where there is a screen");
    }
    if (pictures.isSizeGiven() || front != null || inLeaf || json()) {
      faults.add(
          "view",
          "picture-only",
          "--size, --front, --in-leaf and --json are about a picture",
          "Add --screenshot OUT.png, or leave them out");
    }
    chosen(given, faults);
    faults.throwIfAny();
    opener.open(
        Optional.of(
            new Start.Given(
                given.file().orElseThrow(),
                given.path().orElseThrow(),
                Optional.ofNullable(plan))));
    return ExitCode.DONE;
  }

  private int drawPicture() throws InputException {
    Faults faults = new Faults();
    TreeArgument.Given given = tree.read(faults);
    Optional<Wanted> out = pictures.read(screenshot, given.path(), faults);
    Optional<Double> azimuth = azimuth(new OptionValues(faults));
    Optional<Plan> chosen = chosen(given, faults);
    Optional<Trying.Draws> draws = sampling.read(faults);
    Said said = occasion.read(faults);
    faults.throwIfAny();
    try (Progress progress = progress()) {
      Document document = given.document().orElseThrow();
      Optional<TrialResult> trial =
          chosen.map(
              one ->
                  trial(
                      document,
                      one,
                      new TrialRun(new Trying(draws, said, Optional.empty()), progress)));
      progress.now("Drawing the picture");
      draw(
              new PrintedPicture.Subject(document, chosen, trial, inLeaf),
              azimuth,
              out.orElseThrow().pixels())
          .write(out.get().file());
    }
    console().answer(answer(out.get()));
    return ExitCode.DONE;
  }

  private Optional<Plan> chosen(TreeArgument.Given given, Faults faults) {
    return plan == null
        ? Optional.empty()
        : given
            .document()
            .flatMap(document -> faults.tryTo(() -> PlanChoice.named(document, plan)));
  }

  private Optional<Double> azimuth(OptionValues values) {
    if (front == null) {
      return Optional.empty();
    }
    OptionValues.Range round =
        new OptionValues.Range("--front", -360, 360, "the azimuth to look from, in degrees");
    return values.number(front, round).stream().mapToObj(Math::toRadians).findFirst();
  }

  private static TrialResult trial(Document document, Plan one, TrialRun run) {
    TrialRequest request = TrialRequest.of(document.tree(), one, TrialSpecies.of(document.tree()));
    return run.of(request, "plan " + one.id());
  }

  private static PrintedPicture draw(
      PrintedPicture.Subject subject, Optional<Double> azimuth, PictureSize pixels)
      throws InputException {
    double from = azimuth.orElse(subject.plan().flatMap(ViewVerb::front).orElse(0.0));
    return PrintedPicture.view(subject, ViewAngle.level(from), pixels);
  }

  private static Optional<Double> front(Plan plan) {
    return plan.frontAzimuth().stream().boxed().findFirst();
  }

  private String answer(Wanted out) {
    PictureSize pixels = out.pixels();
    if (json()) {
      ObjectNode node = JsonAnswer.object();
      node.put("picture", out.name());
      node.put("width_px", pixels.width());
      node.put("height_px", pixels.height());
      return JsonAnswer.text(node);
    }
    String size = pixels.width() + " x " + pixels.height() + " pixels";
    return new TextPage().words("Picture: " + out.name() + " (" + size + ")").toString();
  }
}
