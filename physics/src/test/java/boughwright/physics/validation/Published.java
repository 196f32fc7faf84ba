// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the published figures; their sources stand in the README beside them. */
final class Published {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private Published() {}

  static List<CSVRecord> rows(String name) {
    try (Reader reader =
        new InputStreamReader(
            Published.class.getResourceAsStream("/branches/" + name), StandardCharsets.UTF_8)) {
      return FORMAT.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Stems of one set. */
  static List<CSVRecord> stems(String set) {
    return rows("stems.csv").stream().filter(row -> row.get("set").equals(set)).toList();
  }

  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** A column of a single figure. */
  static double figure(String id, String column) {
    return rows("figures.csv").stream()
        .filter(row -> row.get("id").equals(id))
        .mapToDouble(row -> number(row, column))
        .findFirst()
        .orElseThrow();
  }
}
