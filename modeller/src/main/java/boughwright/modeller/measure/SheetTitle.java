// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.Place;
import boughwright.modeller.tree.Unions;
import boughwright.modeller.units.LengthText;
import boughwright.modeller.units.UnreadableException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the comment lines above the headings say about the whole tree.
 *
 * @param name {@code # name:}, or the name of the file
 * @param species {@code # species:}
 * @param measuredOn {@code # measured:}
 * @param unions {@code # unions:}
 * @param bark {@code # bark:} [m]
 */
record SheetTitle(
    String name,
    String species,
    Optional<LocalDate> measuredOn,
    Unions unions,
    OptionalDouble bark) {

  private static final Set<String> KEYS = Set.of("name", "species", "measured", "unions", "bark");
  private static final Pattern ENTRY = Pattern.compile("(\\p{L}+)\\s*:\\s*(.*)");
  private static final Map<String, Unions> UNIONS =
      Map.of("surface", Unions.SURFACE, "axis", Unions.AXIS);
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2200;

  private record Entry(String value, Place place) {}

  static SheetTitle of(List<SheetPreamble.Comment> comments, SheetProblems problems) {
    Map<String, Entry> entries = new HashMap<>();
    for (SheetPreamble.Comment comment : comments) {
      collect(comment, entries, problems);
    }
    return new SheetTitle(
        name(entries.get("name"), problems),
        species(entries.get("species"), problems),
        date(entries.get("measured"), problems),
        unions(entries.get("unions"), problems),
        bark(entries.get("bark"), problems));
  }

  private static void collect(
      SheetPreamble.Comment comment, Map<String, Entry> entries, SheetProblems problems) {
    Matcher entry = ENTRY.matcher(comment.text());
    if (!entry.matches()) {
      return;
    }
    String key = entry.group(1).toLowerCase(Locale.ROOT);
    Place place = problems.place(comment.line(), "# " + SheetLimits.shown(entry.group(1)));
    if (!KEYS.contains(key)) {
      problems.warn(
          place,
          "unknown-title",
          "this line is taken for a comment",
          "Lines that say something about the tree begin with # name:, # species:, # measured:,"
              + " # unions: or # bark:");
    } else if (entries.containsKey(key)) {
      problems.fault(place, "duplicate-title", "this stands here twice", "Keep one of the lines");
    } else if (entry.group(2).isBlank()) {
      problems.fault(place, "empty-title", "nothing stands after the colon", "Fill it in");
      entries.put(key, new Entry("", place));
    } else {
      entries.put(key, new Entry(entry.group(2).strip(), place));
    }
  }

  private static String name(Entry entry, SheetProblems problems) {
    if (entry != null) {
      return entry.value();
    }
    String file = problems.source().replaceAll("^.*[/\\\\]", "");
    String name = file.replaceFirst("(?<=.)(\\.sheet)?\\.[^.]*$", "");
    problems.warn(
        Place.of(problems.source()),
        "no-name",
        "the sheet names no tree, so it is called \"" + name + "\" after the file",
        "Add a first line such as # name: Hornbeam from the north bed");
    return name;
  }

  private static String species(Entry entry, SheetProblems problems) {
    if (entry == null) {
      problems.fault(
          Place.of(problems.source()),
          "no-species",
          "the sheet does not say what wood the tree is made of",
          "Add a first line such as # species: carpinus-betulus");
      return "";
    }
    return entry.value();
  }

  private static Optional<LocalDate> date(Entry entry, SheetProblems problems) {
    if (entry == null || entry.value().isEmpty()) {
      return Optional.empty();
    }
    try {
      LocalDate date = LocalDate.parse(entry.value());
      if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
        return Optional.of(date);
      }
    } catch (DateTimeParseException e) {
      // falls through to the one fault for every wrong date
    }
    problems.fault(
        entry.place(),
        "not-a-date",
        "\"" + SheetLimits.shown(entry.value()) + "\" is no day of the calendar as it is read here",
        "Write year, month and day, such as 2026-03-02");
    return Optional.empty();
  }

  private static Unions unions(Entry entry, SheetProblems problems) {
    if (entry == null || entry.value().isEmpty()) {
      return Unions.SURFACE;
    }
    Unions unions = UNIONS.get(entry.value().toLowerCase(Locale.ROOT));
    if (unions == null) {
      problems.fault(
          entry.place(),
          "unknown-word",
          "\"" + SheetLimits.shown(entry.value()) + "\" is neither surface nor axis",
          "Write surface, unless the tree is a worked example of plain rod theory");
      return Unions.SURFACE;
    }
    return unions;
  }

  private static OptionalDouble bark(Entry entry, SheetProblems problems) {
    if (entry == null || entry.value().isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      double metres = LengthText.metres(entry.value());
      if (metres >= 0 && metres < SheetLimits.MOST_CALIPER / 2) {
        return OptionalDouble.of(metres);
      }
      problems.fault(
          entry.place(),
          "bad-bark",
          entry.value() + " is no thickness of bark",
          "Measure it again");
    } catch (UnreadableException e) {
      problems.add(e.at(entry.place()));
    }
    return OptionalDouble.empty();
  }
}
