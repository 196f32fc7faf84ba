// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Rows of the reference tables in the test resources; their README states the conventions. */
public record Table(List<String> columns, CSVRecord row) {
  public static final double MM = 1e-3;
  public static final double MPA = 1e6;

  public static Stream<Table> of(String file) {
    try (InputStream in = Table.class.getResourceAsStream("/mechanics/" + file);
        CSVParser rows =
            CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      List<String> columns = rows.getHeaderNames();
      return rows.getRecords().stream().map(row -> new Table(columns, row));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public String text(int column) {
    return row.get(column);
  }

  public String text(String column) {
    return row.get(column);
  }

  public double number(int column) {
    return Double.parseDouble(row.get(column));
  }

  public double number(String column) {
    return Double.parseDouble(row.get(column));
  }

  /** A number after a word in a text, such as 225 in "len=225". */
  static double after(String word, String text) {
    String rest = text.substring(text.indexOf(word) + word.length());
    return Double.parseDouble(rest.replaceFirst("[^-+.0-9eE].*", ""));
  }

  /** Three columns from one on, in millimetres. */
  Point3 point(String firstColumn) {
    int at = columns.indexOf(firstColumn);
    return new Point3(number(at) * MM, number(at + 1) * MM, number(at + 2) * MM);
  }

  Vector3 vector(String firstColumn) {
    int at = columns.indexOf(firstColumn);
    return new Vector3(number(at), number(at + 1), number(at + 2));
  }

  @Override
  public String toString() {
    return row.get(0) + " " + row.get(1);
  }
}
