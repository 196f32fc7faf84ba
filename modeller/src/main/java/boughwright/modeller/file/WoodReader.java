// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.tree.NameRules;
import boughwright.modeller.tree.Response;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.WoodOverride;
import boughwright.modeller.tree.WoodRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what a tree is made of, and what is known better about some of its segments. */
final class WoodReader {
  private static final TreeWood NOT_GIVEN = new TreeWood.OfSpecies("");

  private WoodReader() {}

  static TreeWood wood(ObjectReader top) {
    Optional<Value> species = top.value("species");
    if (species.isEmpty()) {
      top.missing("species", "Write a name such as \"carpinus-betulus\", or \"unknown\"");
      return NOT_GIVEN;
    }
    if (species.get() instanceof Value.Fields fields) {
      return own(new ObjectReader(fields, "species", top.problems()));
    }
    Optional<String> name =
        top.value("species", Value.Text.class, "a name or an object {…}").map(Value.Text::text);
    name.flatMap(NameRules::faultOfName)
        .ifPresent(found -> top.fault("species", "bad-name", "species " + found, "Name the wood"));
    name.ifPresent(text -> SpeciesCheck.note(top, text));
    return new TreeWood.OfSpecies(name.orElse(""));
  }

  private static TreeWood own(ObjectReader object) {
    Optional<String> name = object.text("name");
    if (!object.has("name")) {
      object.missing("name", "Say what this wood is called");
    }
    name.flatMap(NameRules::faultOfName)
        .ifPresent(found -> object.fault("name", "bad-name", "name " + found, "Name the wood"));
    double moe = object.numbers().required("moe_GPa", Quantity.GIGAPASCALS, Range.POSITIVE);
    OptionalDouble shear = shear(object);
    Optional<Response> response = object.choice("response", Response.class);
    Optional<String> source = object.text("source");
    Map<String, Object> extras = object.extras();
    if (object.sound()) {
      judge(object, OptionalDouble.of(moe), shear, response.orElse(Response.FIBRE));
    }
    return object.sound()
        ? new TreeWood.Own(name.orElse(""), moe, shear, response, source, extras)
        : NOT_GIVEN;
  }

  private static void judge(
      ObjectReader object, OptionalDouble moe, OptionalDouble shear, Response response) {
    PlanReader.note(object, WoodRules.findings(moe, shear, response));
  }

  private static OptionalDouble shear(ObjectReader object) {
    return object.numbers().optional("shear_GPa", Quantity.GIGAPASCALS, Range.POSITIVE);
  }

  /**
   * All entries of the field {@code wood} that are sound, in file order.
   *
   * @param usual how the tree's own wood answers strain, where an entry does not say
   */
  static List<WoodOverride> overrides(ObjectReader top, Response usual) {
    List<WoodOverride> overrides = new ArrayList<>();
    Optional<Value.Fields> wood = top.value("wood", Value.Fields.class, "an object {…}");
    if (wood.isEmpty()) {
      return overrides;
    }
    ObjectReader all = new ObjectReader(wood.get(), "wood", top.problems());
    for (String pattern : wood.get().members().keySet()) {
      all.object(pattern, "wood " + Value.Text.quoted(pattern))
          .flatMap(object -> override(object, pattern, usual))
          .ifPresent(overrides::add);
    }
    return overrides;
  }

  private static Optional<WoodOverride> override(
      ObjectReader object, String pattern, Response usual) {
    OptionalDouble moe = object.numbers().optional("moe_GPa", Quantity.GIGAPASCALS, Range.POSITIVE);
    OptionalDouble spread =
        object.numbers().optional("moe_cv", Quantity.FRACTION, Range.ABOVE_ZERO_TO_ONE);
    OptionalDouble shear = shear(object);
    Optional<Response> response = object.choice("response", Response.class);
    Optional<String> source = object.text("source");
    Map<String, Object> extras = object.extras();
    if (object.sound()) {
      judge(object, moe, shear, response.orElse(usual));
      if (spread.isPresent() && moe.isEmpty()) {
        object.warn(
            "moe_cv",
            "spread-of-nothing",
            "moe_cv is given without moe_GPa, so it has no effect",
            "Give the moe_GPa it belongs to, or take it out");
      }
    }
    return object.sound()
        ? Optional.of(new WoodOverride(pattern, moe, spread, shear, response, source, extras))
        : Optional.empty();
  }
}
