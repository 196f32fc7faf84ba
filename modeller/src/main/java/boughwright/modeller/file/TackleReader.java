// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Strand;
import boughwright.modeller.plan.Tackle;
import boughwright.modeller.plan.Tightener;
import boughwright.modeller.tree.AnchorKind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what a guy-line is made up of: strand, tightener, pad, lever, anchor. */
final class TackleReader {
  private static final int MOST_STRANDS = 100;

  /** What a file calls the ways to shorten a line. */
  private static final List<String> KINDS =
      List.of("twist-at-end", "twist-in-middle", "turnbuckle");

  private TackleReader() {}

  /** The tackle of a line; only to be used if the line is sound. */
  static Tackle tackle(ObjectReader line) {
    Optional<Strand> strand =
        line.object("strand", line.subject() + " strand").flatMap(TackleReader::strand);
    Optional<Tightener> tightener =
        line.object("tightener", line.subject() + " tightener").flatMap(TackleReader::tightener);
    NumberReader numbers = line.numbers();
    OptionalDouble pad = numbers.optional("pad_length_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double lever = numbers.optional("lever_mm", Quantity.MILLIMETRES, Range.NOT_NEGATIVE).orElse(0);
    Optional<AnchorKind> kind = line.choice("anchor_kind", AnchorKind.class);
    return new Tackle(strand, tightener, pad, lever, kind);
  }

  private static Optional<Strand> strand(ObjectReader object) {
    Optional<Material> material =
        object.oneOfRequired("material", List.of(Material.values()), Material::word);
    double gauge = GaugeReader.gauge(object, material);
    int count = object.numbers().count("count", 1, MOST_STRANDS, 1);
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(new Strand(material.orElseThrow(), gauge, count, extras))
        : Optional.empty();
  }

  private static Optional<Tightener> tightener(ObjectReader object) {
    Optional<String> kind = object.oneOfRequired("kind", KINDS, word -> word);
    NumberReader numbers = object.numbers();
    double in = numbers.optional("turns_in", Quantity.FRACTION, Range.NOT_NEGATIVE).orElse(0);
    boolean buckle = kind.filter("turnbuckle"::equals).isPresent();
    double perTurn =
        buckle ? numbers.required("mm_per_turn", Quantity.MILLIMETRES, Range.POSITIVE) : Double.NaN;
    Map<String, Object> extras = object.extras();
    if (!object.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        buckle
            ? new Tightener.Turnbuckle(perTurn, in, extras)
            : new Tightener.Twist(kind.orElseThrow().equals("twist-in-middle"), in, extras));
  }
}
