// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the table of woods, or one of them. */
@Command(
    name = "species",
    header = "List the woods known, or show one with its sources.",
    customSynopsis = "java -jar boughwright.jar species [NAME] [--json]",
    description = {
      "NAME is a botanical or a common name, or the key used in tree files. Values are",
      "those of green (undried) clear stem wood; where a species has none published,",
      "another stands in and the answer says which."
    },
    footer = {
      "Examples: java -jar boughwright.jar species",
      "          java -jar boughwright.jar species carpinus betulus"
    })
final class SpeciesVerb extends Verb {
  @Parameters(
      paramLabel = "NAME",
      arity = "0..*",
      hideParamSyntax = true,
      description = "A wood; all of them without it.")
  private List<String> words;

  SpeciesVerb(Console console) {
    super(console);
  }

  @Override
  int act() throws InputException {
    if (words == null) {
      List<Species> all = SpeciesTable.bundled().all();
      return answer(() -> SpeciesJson.of(all), () -> SpeciesText.list(all));
    }
    Species one = SpeciesChoice.named("species", String.join(" ", words));
    return answer(() -> SpeciesJson.of(List.of(one)), () -> SpeciesText.one(one));
  }
}
