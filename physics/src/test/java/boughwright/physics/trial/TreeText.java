// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.SpeciesTable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes a tree file by hand, reads it, and tries its only plan. */
final class TreeText {
  private final String species;
  private String more = "";
  private String unions = "axis";
  private final List<String> segments = new ArrayList<>();
  private final List<String> loads = new ArrayList<>();
  private String planFields = "";

  /** A tree of wood of one's own [GPa]. */
  TreeText(double moe, double shear) {
    this(
        text(
            "{\"name\": \"test wood\", \"moe_GPa\": %s, \"shear_GPa\": %s, \"response\":"
                + " \"elastic\"}",
            moe, shear));
  }

  /** A tree of a wood, as JSON. */
  TreeText(String species) {
    this.species = species;
  }

  /** Further fields of the tree, as JSON. */
  TreeText tree(String fields) {
    more = fields + ",";
    return this;
  }

  static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  TreeText unions(String value) {
    unions = value;
    return this;
  }

  /** Fields of the plan, each followed by a comma. */
  TreeText plan(String fields) {
    planFields = fields;
    return this;
  }

  TreeText segment(String fields) {
    segments.add("{" + fields + "}");
    return this;
  }

  /** A proposal of its own with the given fields. */
  TreeText proposal(String fields) {
    loads.add(text("{\"id\": \"p%d\", %s}", loads.size() + 1, fields));
    return this;
  }

  String json() {
    return text(
        "{\"format\": \"boughwright-tree\", \"version\": 1, \"name\": \"check\", \"species\": %s,"
            + " \"bark_mm\": 0, \"unions\": \"%s\", %s \"segments\": [%s], \"plans\": [{\"id\":"
            + " \"a\", %s \"proposals\": [%s]}]}",
        species, unions, more, String.join(",\n", segments), planFields, String.join(",\n", loads));
  }

  TrialResult tryIn(Path folder) {
    return Trial.run(request(folder));
  }

  TrialRequest request(Path folder) {
    Document document = read(folder);
    return TrialRequest.of(
        document.tree(), document.plans().get(0), SpeciesTable.bundled().generic());
  }

  /** The document, written to a file and read from it. */
  Document read(Path folder) {
    try {
      Path file = Files.writeString(folder.resolve("check.tree.json"), json());
      return TreeFiles.read(file).document();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InputException e) {
      throw new IllegalStateException(e);
    }
  }
}
