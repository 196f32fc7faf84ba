// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeRules;
import boughwright.modeller.tree.TreeWood;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads a tape sheet: a tree measured with tape, caliper and protractor, as a CSV table.
 *
 * <p>One row for each straight piece. {@code azimuth_deg} is where the piece points seen from
 * above, clockwise from the viewer's side of the tree; {@code elevation_deg} is how far it rises
 * above level, negative for roots and hanging branches; {@code length_mm} runs along its axis from
 * its start on the parent's axis. So a branch 100 mm long at azimuth 90 and elevation 30 ends 86.6
 * mm to the viewer's left of its start and 50 mm above it:
 *
 * <pre>
 * # name: Example
 * # species: carpinus-betulus
 * segment,parent,kind,azimuth_deg,elevation_deg,length_mm,caliper_start_mm,caliper_end_mm,along
 * t1,,trunk,,90,70,58,50,
 * b1,t1,branch,90,30,100,17,14,0.5
 * </pre>
 *
 * <p>Here {@code b1} starts half-way up the trunk, at (0, 0, 35) mm, and ends at (-86.6, 0, 85) mm.
 *
 * <p>Cells are separated by commas, semicolons or tabs, numbers have a decimal point or comma, and
 * the unit of every length stands in its heading (mm, cm, m or in). A sheet has at most 8 million
 * bytes, 20,000 rows, 100 columns, 2,000 characters in a cell and 100 in a name.
 */
public final class TapeSheet {
  private final SheetProblems problems;

  private TapeSheet(SheetProblems problems) {
    this.problems = problems;
  }

  /**
   * Reads a sheet from a file.
   *
   * @throws InputException with every fault of the sheet, or if the file cannot be read
   */
  public static MeasuredTree read(Path file) throws InputException {
    Place place = Place.of(file.toString());
    if (!Files.isRegularFile(file)) {
      throw new InputException(
          Problem.fault(place, "no-file", "there is no such file", "Check the name"));
    }
    try (InputStream in = Files.newInputStream(file)) {
      return read(in.readNBytes(SheetLimits.BYTES + 1), file.toString());
    } catch (IOException e) {
      throw new InputException(
          Problem.fault(
              place, "unreadable-file", "the file cannot be read", "Check that it may be read"));
    }
  }

  /**
   * Reads a sheet from its bytes.
   *
   * @param bytes the whole sheet
   * @param source what to call it in messages
   * @throws InputException with every fault of the sheet
   */
  public static MeasuredTree read(byte[] bytes, String source) throws InputException {
    SheetProblems problems = new SheetProblems(source);
    if (bytes.length > SheetLimits.BYTES) {
      throw problems.stop(
          Place.of(source),
          "file-too-large",
          "a sheet may have " + SheetLimits.BYTES + " bytes",
          "Check that this is a tape sheet");
    }
    SheetPreamble preamble = SheetPreamble.of(SheetText.decode(bytes, problems));
    SheetTitle title = SheetTitle.of(preamble.comments(), problems);
    SheetTable table = SheetTable.of(preamble, problems);
    return new TapeSheet(problems).tree(title, table);
  }

  private MeasuredTree tree(SheetTitle title, SheetTable table) throws InputException {
    requireRows(table);
    SheetCells cells = new SheetCells(table, problems);
    Map<String, TapeRow> rows = rows(table, cells);
    List<ParentOrder.Claim> claims = claims(table, cells);
    Calipers calipers = new Calipers(rows, claims, cells);
    List<String> outward =
        table.isComplete() ? new ParentOrder(claims, problems).outward() : List.of();
    problems.throwIfFaulty();
    TreePlacer placer = new TreePlacer(calipers, cells);
    Map<String, Segment> placed = new HashMap<>();
    outward.forEach(id -> placer.place(rows.get(id)).ifPresent(s -> placed.put(id, s)));
    problems.throwIfFaulty();
    calipers.sayBorrowed(problems);
    cells.sayRepeatedUnits();
    return judged(title, rows.keySet().stream().map(placed::get).toList(), rows);
  }

  private void requireRows(SheetTable table) throws InputException {
    if (!table.headingsSound()) {
      problems.throwIfFaulty();
    }
    if (table.rows().isEmpty() && table.isComplete()) {
      throw problems.stop(
          Place.of(problems.source()),
          "no-rows",
          "the sheet has no rows of measurements",
          "Measure at least the trunk");
    }
  }

  private static Map<String, TapeRow> rows(SheetTable table, SheetCells cells) {
    TapeRows reader = new TapeRows(cells);
    Map<String, TapeRow> rows = new LinkedHashMap<>();
    for (SheetRow row : table.rows()) {
      reader.read(row).ifPresent(read -> rows.putIfAbsent(read.id(), read));
    }
    return rows;
  }

  private static List<ParentOrder.Claim> claims(SheetTable table, SheetCells cells) {
    List<ParentOrder.Claim> claims = new ArrayList<>();
    for (SheetRow row : table.rows()) {
      cells
          .text(row, SheetColumn.SEGMENT)
          .map(id -> new ParentOrder.Claim(row, id, cells.text(row, SheetColumn.PARENT)))
          .ifPresent(claims::add);
    }
    return claims;
  }

  private MeasuredTree judged(SheetTitle title, List<Segment> segments, Map<String, TapeRow> rows)
      throws InputException {
    for (Finding finding : TreeRules.findings(segments, List.of(), title.bark())) {
      String id = finding.subjects().isEmpty() ? "" : finding.subjects().get(0);
      int line = rows.containsKey(id) ? rows.get(id).row().line() : 0;
      String subject =
          Stream.of(id.isEmpty() ? "" : "segment \"" + SheetLimits.shown(id) + '"', finding.field())
              .filter(part -> !part.isEmpty())
              .collect(Collectors.joining(", "));
      problems.add(
          new Problem(
              finding.severity(),
              problems.place(line, subject),
              finding.kind(),
              finding.found(),
              finding.remedy()));
    }
    problems.throwIfFaulty();
    Tree tree =
        new TreeDraft(title.name(), new TreeWood.OfSpecies(title.species()), segments)
            .measuredOn(title.measuredOn())
            .bark(title.bark())
            .unions(title.unions())
            .build();
    return new MeasuredTree(new Document(tree, List.of(), Map.of()), problems.inOrder());
  }
}
