// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.physics.trial.PullAnswer;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Learns the stiffness of a branch from a pull test and keeps it in the tree file. */
@Command(
    name = "pulltest",
    header = "Learn how stiff a branch is from a known pull and the movement measured.",
    customSynopsis = {
      "java -jar boughwright.jar pulltest FILE --segment S --along F",
      "        (--hung-kg K | --scale-kg K | --force-N N) [--direction X,Y,Z]",
      "        --moved-mm M [--base-moved-mm B] [--second-hung-kg K2",
      "        --second-moved-mm M2] [--done-on DATE] [--no-risk] [--dry-run] [--json]"
    },
    description = {
      "Hang a known weight on a branch, or pull with a spring scale, and measure how far",
      "that point moves, half a minute after loading. The answer is how stiff the",
      "branch is and how sure that is; it goes into the file with the test, and every",
      "later trial uses it. Tests made before count too. The old file is kept beside",
      "the new one with a ~ at the end of its name."
    },
    footer = {
      "Example: java -jar boughwright.jar pulltest hornbeam.tree.json --segment b1c",
      "         --along 0.9 --hung-kg 0.8 --moved-mm 2.5 --second-hung-kg 1.6",
      "         --second-moved-mm 5.2",
      "docs/user/pull-test.md shows how it is done."
    })
final class PullTestVerb extends Verb {
  @Mixin private TreeArgument tree;

  @Mixin private PullTestOptions options;

  @Option(
      names = "--accept",
      order = 30,
      description = "Take a test that was questioned as it is: you have looked again.")
  private boolean accept;

  @Option(
      names = "--replace",
      order = 31,
      description = "Replace a modulus that was given by hand; it stays told in the source.")
  private boolean replace;

  @Option(names = "--dry-run", order = 32, description = "Show the answer, change nothing.")
  private boolean dryRun;

  @Option(
      names = "--no-risk",
      order = 33,
      description = "Leave out what becomes of the plans, which takes a while.")
  private boolean noRisk;

  PullTestVerb(Console console) {
    super(console);
  }

  @Override
  int act() throws InputException {
    Faults faults = new Faults();
    TreeArgument.Given given = tree.read(faults);
    Optional<PullTestReading.Given> test =
        new PullTestReading(options, faults).read(given.document().map(Document::tree));
    faults.throwIfAny();
    Document before = given.document().orElseThrow();
    PullTestCheck check = new PullTestCheck(before.tree(), test.orElseThrow());
    check.beforehand(replace);
    PullTestAnswer answer = answer(check, before);
    Optional<Path> written = dryRun ? Optional.empty() : given.path();
    if (written.isPresent()) {
      TreeFiles.write(answer.after(), written.get());
    }
    return answer(() -> PullTestJson.of(answer, written), () -> PullTestText.of(answer, written));
  }

  private PullTestAnswer answer(PullTestCheck check, Document before) throws InputException {
    try (Progress progress = progress()) {
      progress.now("Working the test out");
      PullAnswer pull = check.answer(accept);
      return noRisk
          ? PullTestAnswer.plain(before, pull)
          : PullTestAnswer.of(before, pull, progress);
    }
  }
}
