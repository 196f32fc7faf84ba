// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.stage.Course;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/** The stages of a course as a table: a row for each line of each stage. */
final class StageTable {
  /** Longer names of lines are told under the table, so that it fits the page. */
  private static final int LONGEST_ID = 6;

  private final Course course;
  private final DoubleFunction<String> when;
  private final List<String> ids;

  /**
   * @param when the day of a time [s]
   */
  StageTable(Course course, DoubleFunction<String> when) {
    this.course = course;
    this.when = when;
    ids =
        course.steps().stream()
            .flatMap(step -> step.pose().lines().stream())
            .map(LineTrial::id)
            .distinct()
            .toList();
  }

  void write(TextPage page) {
    page.table(ids.isEmpty() ? withoutLines() : withLines());
    page.inner("Tip: how far the end that moves most has come.");
    if (!ids.isEmpty()) {
      page.inner(
          "Shorter: than the straight distance, pad to anchor, as measured. Left: what should still"
              + " be in the line just before. Pull: right after, best guess.");
    }
    for (Course.Step step : course.steps()) {
      String turns =
          ids.stream()
              .filter(step.turns()::containsKey)
              .map(id -> name(id) + " " + Shown.fixed(step.turns().get(id), 1))
              .collect(Collectors.joining(", "));
      if (!turns.isEmpty()) {
        page.inner("Turns in all on " + when.apply(step.time()) + ": " + turns + ".");
      }
    }
    String names =
        ids.stream()
            .filter(id -> !name(id).equals(id))
            .map(id -> name(id) + " is " + id)
            .collect(Collectors.joining(", "));
    if (!names.isEmpty()) {
      page.inner(names + ".");
    }
  }

  private TextTable withoutLines() {
    TextTable table = new TextTable(2).row("when", "do", "tip", "may break");
    for (Course.Step step : course.steps()) {
      table.row(when.apply(step.time()), act(step), moved(step), odds(step));
    }
    return table;
  }

  private TextTable withLines() {
    TextTable table =
        new TextTable(3)
            .row("when", "do", "line", "shorter", "left N", "pull N", "tip", "may break");
    for (Course.Step step : course.steps()) {
      List<String> first = List.of(when.apply(step.time()), act(step));
      List<String> last = List.of(moved(step), odds(step));
      List<List<String>> lines = lines(step);
      for (int n = 0; n < lines.size(); n++) {
        List<String> cells = new ArrayList<>(n == 0 ? first : List.of("", ""));
        cells.addAll(lines.get(n));
        cells.addAll(n == 0 ? last : List.of("", ""));
        table.row(cells.toArray(String[]::new));
      }
    }
    return table;
  }

  /**
   * Name, shortening, what is left and pull of each line; one row of dashes where none is drawn.
   */
  private List<List<String>> lines(Course.Step step) {
    List<List<String>> rows = new ArrayList<>();
    boolean drawn = step.act() == Course.Act.BEND || step.act() == Course.Act.TIGHTEN;
    for (LineTrial line : drawn ? step.pose().lines() : List.<LineTrial>of()) {
      Range left = step.tensionsBefore().get(line.id());
      rows.add(
          List.of(
              name(line.id()),
              Shown.millimetres(line.shortening()),
              left == null ? "-" : range(left),
              line.slack() ? "slack" : round(line.tension())));
    }
    return rows.isEmpty() ? List.of(List.of("-", "-", "-", "-")) : rows;
  }

  private String name(String id) {
    return id.codePointCount(0, id.length()) <= LONGEST_ID ? id : "#" + (ids.indexOf(id) + 1);
  }

  private static String range(Range left) {
    int decimals = left.high() < 9.95 ? 1 : 0;
    return Shown.fixed(left.low(), decimals) + "-" + Shown.fixed(left.high(), decimals);
  }

  private static String round(double pull) {
    return Shown.fixed(pull, pull < 9.95 ? 1 : 0);
  }

  private static String act(Course.Step step) {
    String part = Shown.fixed(100 * step.part(), 0) + " %";
    return switch (step.act()) {
      case BEND, TIGHTEN -> "to " + part;
      case LET_GO -> "hands off";
      case LOOK -> "look";
      case RELEASE -> "take off";
    };
  }

  private static String moved(Course.Step step) {
    return Shown.fixed(1000 * step.moved(), 0) + " mm";
  }

  private static String odds(Course.Step step) {
    return step.odds()
        .map(
            odds ->
                Odds.words(odds.p())
                    .replace("about ", "")
                    .replace("less than ", "< ")
                    .replace("certain", "sure"))
        .orElse("-");
  }
}
