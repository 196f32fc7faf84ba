// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.problem.NearNames;
import boughwright.modeller.tree.Finding.Words;
import boughwright.modeller.tree.NameRules;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Takes the fields out of one JSON object, and notes what is wrong with each.
 *
 * <p>A getter that meets a fault notes it and returns a stand-in, so that all faults of the object
 * come out in one go; the caller asks {@link #sound()} before it builds anything. An optional field
 * that is missing is empty; a field that is {@code null} is a fault, for nobody can tell whether it
 * stands for zero, for unknown or for the default.
 */
final class ObjectReader {
  /** Tells an editor where the schema of a file is; it needs no warning. */
  private static final String SCHEMA = "$schema";

  private final Value.Fields fields;
  private final String subject;
  private final ProblemList problems;
  private final Set<String> known = new LinkedHashSet<>();
  private final int faultsBefore;

  ObjectReader(Value.Fields fields, String subject, ProblemList problems) {
    this.fields = fields;
    this.subject = subject;
    this.problems = problems;
    this.faultsBefore = problems.faults();
  }

  String subject() {
    return subject;
  }

  ProblemList problems() {
    return problems;
  }

  /** True while nothing read from this object, or inside it, was a fault. */
  boolean sound() {
    return problems.faults() == faultsBefore;
  }

  /** The object itself, or one of its fields if it is there: where a problem is shown. */
  Value at(String field) {
    return fields.members().getOrDefault(field, fields);
  }

  void fault(String field, String kind, String found, String remedy) {
    problems.fault(at(field), subject, new Words(kind, found, remedy));
  }

  void warn(String field, String kind, String found, String remedy) {
    problems.warn(at(field), subject, new Words(kind, found, remedy));
  }

  boolean has(String field) {
    known.add(field);
    return fields.members().containsKey(field);
  }

  /** A field of any kind. */
  Optional<Value> value(String field) {
    known.add(field);
    return Optional.ofNullable(fields.members().get(field));
  }

  /** A field of one kind; a fault if it is there and of another kind. */
  <T extends Value> Optional<T> value(String field, Class<T> type, String expected) {
    Optional<Value> value = value(field);
    if (value.isPresent() && !type.isInstance(value.get())) {
      wrongType(field, value.get(), expected);
      return Optional.empty();
    }
    return value.map(type::cast);
  }

  private void wrongType(String field, Value value, String expected) {
    String found = field + " is " + value.words() + ": " + expected + " is expected";
    if (value instanceof Value.Nothing) {
      fault(field, "null-value", found, "Give the value, or leave the field out where it may be");
    } else if (value instanceof Value.Text && expected.contains("number")) {
      fault(field, "no-number", found, "Write the number without quotation marks");
    } else if (value instanceof Value.Numeral && expected.contains("text")) {
      fault(field, "wrong-type", found, "Write it in quotation marks");
    } else {
      fault(field, "wrong-type", found, "Give " + expected);
    }
  }

  /** Notes a field that must be there and is not. */
  void missing(String field, String remedy) {
    fault(field, "missing-field", field + " is missing", remedy);
  }

  Optional<String> text(String field) {
    return value(field, Value.Text.class, "a text").map(Value.Text::text);
  }

  /** An id: not blank, not long, without characters that cannot be kept. */
  String id(String field) {
    if (!has(field)) {
      missing(field, "Give it a name that no other one has");
      return "";
    }
    Optional<String> id = text(field);
    id.flatMap(NameRules::faultOfId)
        .ifPresent(found -> fault(field, "bad-id", field + " " + found, "Give another id"));
    return id.orElse("");
  }

  Optional<Boolean> flag(String field) {
    return value(field, Value.Flag.class, "true or false").map(Value.Flag::on);
  }

  Optional<LocalDate> date(String field) {
    Optional<String> text = text(field);
    try {
      return text.filter(day -> day.matches("\\d{4}-\\d{2}-\\d{2}"))
          .map(LocalDate::parse)
          .or(
              () -> {
                text.ifPresent(day -> noDate(field, day));
                return Optional.empty();
              });
    } catch (DateTimeException e) {
      noDate(field, text.orElse(""));
      return Optional.empty();
    }
  }

  private void noDate(String field, String day) {
    fault(
        field,
        "no-date",
        field + " is " + Value.Text.quoted(day) + ", which is no day of the calendar",
        "Write year-month-day, such as 2026-03-02");
  }

  /** One of the constants of an enum, written in lower case. */
  <E extends Enum<E>> Optional<E> choice(String field, Class<E> type) {
    return oneOf(
        field,
        List.of(type.getEnumConstants()),
        constant -> constant.name().toLowerCase(Locale.ROOT));
  }

  /** One of a few things that each have a word; a fault names the words. */
  <E> Optional<E> oneOf(String field, List<E> all, Function<E, String> word) {
    List<String> words = all.stream().map(word).toList();
    Optional<String> text = text(field);
    Optional<E> match =
        text.flatMap(t -> all.stream().filter(e -> word.apply(e).equals(t)).findFirst());
    if (text.isPresent() && match.isEmpty()) {
      unknownWord(field, field + " is " + Value.Text.quoted(text.get()), words, text.get());
    }
    return match;
  }

  /** Notes a word that is none of a few; the remedy names those near it, else all. */
  void unknownWord(String field, String found, List<String> words, String word) {
    List<String> near = NearNames.of(word, words);
    fault(
        field,
        "unknown-word",
        found + ", which is none of the words known",
        (near.isEmpty() ? "" : "Did you mean " + String.join(" or ", near) + "? ")
            + "Write one of: "
            + String.join(", ", words));
  }

  /** One of a few things that each have a word, which must be there. */
  <E> Optional<E> oneOfRequired(String field, List<E> all, Function<E, String> word) {
    if (!has(field)) {
      missing(field, "Write one of: " + String.join(", ", all.stream().map(word).toList()));
    }
    return oneOf(field, all, word);
  }

  NumberReader numbers() {
    return new NumberReader(this);
  }

  /** An object inside this one, known by its field name after this object's own name. */
  Optional<ObjectReader> object(String field, String name) {
    return value(field, Value.Fields.class, "an object {…}")
        .map(inner -> new ObjectReader(inner, name, problems));
  }

  /** The elements of a list; empty if there is no such field. */
  List<Value> items(String field) {
    return value(field, Value.Items.class, "a list […]").map(Value.Items::values).orElse(List.of());
  }

  /** The objects in a list that is not too long; an element that is no object is a fault. */
  List<Value.Fields> objects(String field, int most) {
    List<Value> items = items(field);
    if (items.size() > most) {
      String found =
          String.format(
              Locale.ROOT, "%s has %,d elements, at most %,d are read", field, items.size(), most);
      fault(field, "too-many-" + field.replace('_', '-'), found, Limits.words());
      return List.of();
    }
    for (Value item : items) {
      if (!(item instanceof Value.Fields)) {
        String found = "an element of " + field + " is " + item.words();
        problems.fault(
            item, subject, new Words("wrong-type", found, "Give an object {…} in its place"));
      }
    }
    return items.stream()
        .filter(Value.Fields.class::isInstance)
        .map(Value.Fields.class::cast)
        .toList();
  }

  /** Names of the fields nobody asked for so far. */
  List<String> unasked() {
    return fields.members().keySet().stream().filter(name -> !known.contains(name)).toList();
  }

  /**
   * All fields nobody asked for, with one warning for each name. To be called after the last
   * getter.
   */
  Map<String, Object> extras() {
    Map<String, Object> extras = new LinkedHashMap<>();
    fields
        .members()
        .forEach(
            (name, value) -> {
              if (!known.contains(name)) {
                if (!name.equals(SCHEMA)) {
                  problems.unknownField(value, subject, name, remedy(name));
                }
                extras.put(name, ExtraValues.of(value, subject, problems));
              }
            });
    return extras;
  }

  private String remedy(String name) {
    List<String> near = NearNames.of(name, known);
    String kept = "It is kept as it is and has no effect";
    return near.isEmpty()
        ? kept
        : kept + "; if " + String.join(" or ", near) + " is meant, write it so";
  }
}
