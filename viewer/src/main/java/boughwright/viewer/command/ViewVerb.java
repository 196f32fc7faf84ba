// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.picture.PictureSize;
import boughwright.viewer.picture.PrintedPicture;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.window.shell.Start;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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
  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      hideParamSyntax = true,
      description = "A tree file, NAME.tree.json.")
  private List<String> files;

  @Option(
      names = "--screenshot",
      paramLabel = "OUT.png",
      order = 1,
      description = "The picture to write.")
  private String screenshot;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      order = 2,
      description = "Width and height in pixels, such as 1800x1200.")
  private String size;

  @Option(
      names = "--plan",
      paramLabel = "ID",
      order = 3,
      description = "Show this plan, its proposals tried.")
  private String plan;

  @Option(
      names = "--front",
      paramLabel = "DEGREES",
      order = 4,
      description = {
        "Azimuth to look from: 0 is where the viewer stood when measuring, 90 the",
        "viewer's left. By default the front of the plan, else 0."
      })
  private String front;

  @Option(
      names = "--in-leaf",
      order = 5,
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
    Optional<Path> file = faults.tryTo(() -> InputFiles.only(files, "FILE"));
    if (!opener.hasDisplay()) {
      faults.add(
          "view",
          "no-display",
          "there is no display to open a window on",
          "Add --screenshot OUT.png for a picture, or start it where there is a screen");
    }
    if (size != null || front != null || inLeaf || json()) {
      faults.add(
          "view",
          "picture-only",
          "--size, --front, --in-leaf and --json are about a picture",
          "Add --screenshot OUT.png, or leave them out");
    }
    Optional<TreeFile> tree = file.flatMap(path -> faults.tryTo(() -> TreeFiles.read(path)));
    if (plan != null && tree.isPresent()) {
      faults.tryTo(() -> PlanChoice.named(tree.get().document(), plan));
    }
    faults.throwIfAny();
    opener.open(
        Optional.of(
            new Start.Given(tree.orElseThrow(), file.orElseThrow(), Optional.ofNullable(plan))));
    return ExitCode.DONE;
  }

  private int drawPicture() throws InputException {
    Faults faults = new Faults();
    Optional<Path> file = faults.tryTo(() -> InputFiles.only(files, "FILE"));
    OptionValues values = new OptionValues(faults);
    PictureSize pixels = values.size(size);
    Optional<Double> azimuth = azimuth(values);
    Optional<Path> out = Optional.empty();
    if (file.isPresent()) {
      out = faults.tryTo(() -> OutputFile.forPicture(screenshot, file.get()));
    }
    Optional<TreeFile> tree = file.flatMap(path -> faults.tryTo(() -> TreeFiles.read(path)));
    Optional<Plan> chosen = Optional.empty();
    if (plan != null && tree.isPresent()) {
      chosen = faults.tryTo(() -> PlanChoice.named(tree.get().document(), plan));
    }
    Optional<Trying.Draws> draws = sampling.read(faults);
    Said said = occasion.read(faults);
    faults.throwIfAny();
    try (Progress progress = Progress.of(console(), json())) {
      Document document = tree.orElseThrow().document();
      Optional<TrialResult> trial =
          chosen.map(
              one ->
                  trial(
                      document,
                      one,
                      new TrialRun(new Trying(draws, said, Optional.empty()), progress)));
      progress.now("Drawing the picture");
      draw(new PrintedPicture.Subject(document, chosen, trial, inLeaf), azimuth, pixels)
          .write(out.orElseThrow());
    }
    console().answer(answer(out.get(), pixels));
    return ExitCode.DONE;
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

  private String answer(Path out, PictureSize pixels) {
    if (json()) {
      ObjectNode node = JsonAnswer.object();
      node.put("picture", out.toString());
      node.put("width_px", pixels.width());
      node.put("height_px", pixels.height());
      return JsonAnswer.text(node);
    }
    String size = pixels.width() + " x " + pixels.height() + " pixels";
    return new TextPage().words("Picture: " + out + " (" + size + ")").toString();
  }
}
