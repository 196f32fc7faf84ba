// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.species;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads the table of woods from its CSV resource.
 *
 * <p>A row has values of its own, or names in {@code proxy_of} the rows whose values stand in for
 * it: the mean of them, each freed of its shear deflection first when they are several.
 */
final class SpeciesCsv {
  private static final String RESOURCE = "species.csv";

  private final Map<String, Row> rows = new LinkedHashMap<>();
  private final Map<String, Species> done = new LinkedHashMap<>();

  private SpeciesCsv() {}

  /** A line of the table: a wood with values, or the keys of those that stand in. */
  private record Row(CSVRecord fields, boolean softwood, List<String> proxyOf) {}

  static List<Species> bundled() {
    try (InputStream in = SpeciesCsv.class.getResourceAsStream(RESOURCE);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return new SpeciesCsv().read(reader);
    } catch (IOException e) {
      throw new UncheckedIOException("the table of woods cannot be read", e);
    }
  }

  private List<Species> read(Reader reader) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    for (CSVRecord fields : format.parse(reader)) {
      rows.put(
          fields.get("key"),
          new Row(fields, fields.get("wood").equals("softwood"), list(fields.get("proxy_of"))));
    }
    rows.forEach(
        (key, row) -> {
          if (row.proxyOf.isEmpty()) {
            done.put(key, withValues(row.fields));
          }
        });
    List<Species> standIns = standIns();
    standIns.forEach(species -> done.put(species.key(), species));
    List<Species> all = new ArrayList<>();
    rows.forEach((key, row) -> all.add(row.proxyOf.isEmpty() ? done.get(key) : proxy(row)));
    all.addAll(standIns);
    return all;
  }

  private static List<String> list(String cell) {
    return Arrays.stream(cell.split(";")).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }

  private static Species withValues(CSVRecord fields) {
    return new Species(
        fields.get("key"),
        fields.get("botanical_name"),
        list(fields.get("common_names")),
        Double.parseDouble(fields.get("moe_GPa")) * 1e9,
        MoeBasis.valueOf(fields.get("moe_basis")),
        number(fields.get("mor_MPa"), 1e6),
        number(fields.get("crushing_MPa"), 1e6),
        number(fields.get("shear_MPa"), 1e6),
        number(fields.get("tension_perp_MPa"), 1e6),
        number(fields.get("compression_perp_MPa"), 1e6),
        number(fields.get("work_to_max_load_kJ_m3"), 1e3),
        number(fields.get("density_kg_m3"), 1),
        spread(fields),
        words(fields.get("proxy_for")),
        fields.get("source"),
        fields.get("checked"));
  }

  /**
   * The scatter of a wood's own pieces. The table leaves it out where fewer than 12 were bent (a
   * choice): a scatter seen on so few is itself out by a quarter, and comes out too small.
   */
  private static Optional<SpeciesSpread> spread(CSVRecord fields) {
    OptionalDouble moe = number(fields.get("cv_moe"), 1);
    return moe.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new SpeciesSpread(
                moe.getAsDouble(),
                Double.parseDouble(fields.get("cv_mor")),
                Double.parseDouble(fields.get("cv_crushing")),
                number(fields.get("cv_shear"), 1),
                "standard deviation over mean of the pieces tested, " + fields.get("source")));
  }

  private static OptionalDouble number(String cell, double factor) {
    return cell.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(cell) * factor);
  }

  private static Optional<String> words(String cell) {
    return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
  }

  private Species proxy(Row row) {
    List<Species> sources = row.proxyOf.stream().map(done::get).toList();
    CSVRecord fields = row.fields;
    Species values = sources.size() == 1 ? sources.get(0) : SpeciesBlend.mean(sources);
    return new Species(
        fields.get("key"),
        fields.get("botanical_name"),
        list(fields.get("common_names")),
        values.moe(),
        values.moeBasis(),
        values.mor(),
        values.crushing(),
        values.shear(),
        values.tensionPerp(),
        values.compressionPerp(),
        values.workToMaxLoad(),
        values.density(),
        values.spread(),
        words(fields.get("proxy_for")),
        values.source(),
        "derived");
  }

  private List<Species> standIns() {
    List<Species> hard = published(false);
    List<Species> soft = published(true);
    List<Species> both = new ArrayList<>(hard);
    both.addAll(soft);
    return List.of(
        SpeciesBlend.median("generic-hardwood", List.of("generic hardwood", "hardwood"), hard),
        SpeciesBlend.median("generic-softwood", List.of("generic softwood", "softwood"), soft),
        SpeciesBlend.median(SpeciesTable.GENERIC, List.of("generic wood", "unknown wood"), both));
  }

  private List<Species> published(boolean softwood) {
    return rows.values().stream()
        .filter(row -> row.softwood == softwood && row.proxyOf.isEmpty())
        .map(row -> done.get(row.fields.get("key")))
        .filter(species -> !species.isProxy() && species.checked().equals("seen"))
        .toList();
  }
}
