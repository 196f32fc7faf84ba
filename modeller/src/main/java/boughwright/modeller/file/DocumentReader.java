// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.FrontChoice;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Backdrop;
import boughwright.modeller.tree.Condition;
import boughwright.modeller.tree.Finding.Words;
import boughwright.modeller.tree.NameRules;
import boughwright.modeller.tree.Response;
import boughwright.modeller.tree.Setting;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns the text of a tree file into a document, noting everything wrong with it on the way. */
final class DocumentReader {
  private final ProblemList problems;

  private DocumentReader(String source) {
    this.problems = new ProblemList(source);
  }

  /**
   * What came of reading.
   *
   * @param document the document; empty if there is a fault
   * @param problems all faults and warnings in the order of the file
   */
  record Outcome(Optional<Document> document, List<Problem> problems) {}

  /**
   * Reads the bytes of a file.
   *
   * @param source name of the file, for messages
   * @throws InputException if the bytes are not UTF-8 or not JSON
   */
  static Outcome read(String source, byte[] bytes) throws InputException {
    Value root = JsonText.parse(source, FileText.decode(source, bytes));
    DocumentReader reader = new DocumentReader(source);
    if (FileText.hasMark(bytes)) {
      reader.problems.warn(
          root,
          "",
          new Words(
              "byte-order-mark",
              "the file starts with a byte-order mark",
              "Nothing to do: it is left out when the tree is saved"));
    }
    Optional<Document> document = reader.document(root);
    boolean sound = reader.problems.faults() == 0;
    return new Outcome(sound ? document : Optional.empty(), reader.problems.sorted());
  }

  /** The tree's own fields, read before it is known whether its segments are sound. */
  private record Head(
      String name,
      TreeWood wood,
      Optional<LocalDate> measuredOn,
      OptionalDouble bark,
      Unions unions,
      OptionalDouble caliperError,
      Condition condition) {}

  private Optional<Document> document(Value root) {
    Optional<ObjectReader> top = Header.accept(root, problems);
    if (top.isEmpty()) {
      return Optional.empty();
    }
    Head head = head(top.get());
    Setting setting = SettingReader.setting(top.get());
    TreeParts parts = TreeParts.read(top.get(), head.bark(), usual(head.wood()));
    Optional<Tree> tree =
        problems.faults() > 0
            ? Optional.empty()
            : Optional.of(
                new TreeDraft(head.name(), head.wood(), parts.segments())
                    .measuredOn(head.measuredOn())
                    .bark(head.bark())
                    .unions(head.unions())
                    .overrides(parts.overrides())
                    .wounds(parts.wounds())
                    .caliperError(head.caliperError())
                    .condition(head.condition())
                    .pullTests(parts.pullTests())
                    .setting(setting)
                    .foliage(parts.foliage())
                    .build());
    List<Plan> plans = PlanReader.plans(top.get(), parts.ids(), tree.map(Skeleton::new));
    List<Backdrop> backdrops = BackdropReader.backdrops(top.get());
    FrontChoice fronts = FrontReader.fronts(top.get());
    Map<String, Object> extras = top.get().extras();
    return problems.faults() > 0
        ? Optional.empty()
        : tree.map(sound -> new Document(sound, plans, backdrops, fronts, extras));
  }

  private static Response usual(TreeWood wood) {
    return wood instanceof TreeWood.Own own
        ? own.response().orElse(Response.FIBRE)
        : Response.FIBRE;
  }

  private Head head(ObjectReader top) {
    refuseOtherUnits(top);
    return new Head(
        name(top),
        WoodReader.wood(top),
        Dates.read(top, "measured_on"),
        top.numbers().optional("bark_mm", Quantity.MILLIMETRES, NumberReader.Range.NOT_NEGATIVE),
        top.choice("unions", Unions.class).orElse(Unions.SURFACE),
        ConditionReader.caliperError(top),
        ConditionReader.condition(top));
  }

  /** The unit is in the name of each field; a file that names another one contradicts itself. */
  private static void refuseOtherUnits(ObjectReader top) {
    Value units = top.at("units");
    boolean other = units instanceof Value.Text text && !text.text().equals("mm");
    if (other) {
      top.fault(
          "units",
          "other-units",
          "units is " + units.words() + ", but every length of a tree file is in millimetres",
          "Turn the values into the unit each field name ends in, and take units out");
    }
  }

  private static String name(ObjectReader top) {
    if (!top.has("name")) {
      top.missing("name", "Give the tree a name, such as \"Hornbeam from the old hedge\"");
      return "";
    }
    Optional<String> name = top.text("name");
    name.flatMap(NameRules::faultOfName)
        .ifPresent(found -> top.fault("name", "bad-name", "name " + found, "Give another name"));
    return name.orElse("");
  }
}
