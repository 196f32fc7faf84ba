// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.PullTest.Reading;
import boughwright.modeller.tree.PullTestRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the pull tests of a tree, then asks their own rules and says where each finding is. */
final class PullTestReader {
  private static final Pattern FIELD =
      Pattern.compile("pull_tests\\[(\\d+)]\\.(?:readings\\[(\\d+)]\\.)?(\\w+)");

  private final List<PullTest> tests = new ArrayList<>();
  private final List<Source> sources = new ArrayList<>();

  /** The objects of the file a test came from. */
  private record Source(ObjectReader test, List<ObjectReader> readings) {}

  private PullTestReader() {}

  /** All sound tests of a file; faults and oddities are noted. */
  static List<PullTest> read(ObjectReader top, Collection<String> segmentIds) {
    PullTestReader reader = new PullTestReader();
    for (Value.Fields fields : top.objects("pull_tests", Limits.TESTS)) {
      reader.test(SegmentReader.named(fields, "pull test", top.problems()));
    }
    PullTestRules.findings(segmentIds, reader.tests).forEach(reader::note);
    return reader.tests;
  }

  private void test(ObjectReader object) {
    String id = object.id("id");
    String segment = object.id("segment");
    double along = object.numbers().along("along");
    Optional<Direction3> direction = object.numbers().direction("direction");
    if (!object.has("direction")) {
      object.missing("direction", "Give [x, y, z] along the pull, [0, 0, -1] for a hung weight");
    }
    Optional<LocalDate> doneOn = Dates.read(object, "done_on");
    List<ObjectReader> readingObjects = new ArrayList<>();
    List<Reading> readings = new ArrayList<>();
    for (Value.Fields fields : object.objects("readings", Limits.PARTS)) {
      ObjectReader one = new ObjectReader(fields, object.subject() + " reading", object.problems());
      readingObjects.add(one);
      reading(one).ifPresent(readings::add);
    }
    noReadings(object, readingObjects);
    Map<String, Object> extras = object.extras();
    if (object.sound()) {
      tests.add(
          new PullTest(id, segment, along, direction.orElseThrow(), readings, doneOn, extras));
      sources.add(new Source(object, readingObjects));
    }
  }

  private static void noReadings(ObjectReader object, List<ObjectReader> readings) {
    if (!object.has("readings")) {
      object.missing("readings", "Give at least one force_N with its moved_mm");
    } else if (readings.isEmpty() && object.sound()) {
      object.fault(
          "readings",
          "no-readings",
          "readings is empty",
          "Give at least one force_N with its moved_mm, or take the test out");
    }
  }

  private static Optional<Reading> reading(ObjectReader object) {
    NumberReader numbers = object.numbers();
    double force = numbers.required("force_N", Quantity.NEWTONS, Range.POSITIVE);
    double moved = numbers.required("moved_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double base = numbers.optional("base_moved_mm", Quantity.MILLIMETRES, Range.ANY).orElse(0);
    double forceError =
        numbers
            .optional("force_error_pct", Quantity.PERCENT, Range.PERCENTAGE)
            .orElse(Reading.USUAL_FORCE_ERROR);
    double movedError =
        numbers
            .optional("moved_error_mm", Quantity.MILLIMETRES, Range.POSITIVE)
            .orElse(Reading.USUAL_MOVED_ERROR);
    if (object.sound() && !(Math.abs(base) < moved)) {
      object.fault(
          "base_moved_mm",
          "nothing-bent",
          "the start of the branch moved "
              + Amount.millimetres(base)
              + " and the point "
              + Amount.millimetres(moved)
              + ": the branch itself did not bend",
          "Hold trunk and container still and read both again, or take this reading out");
    }
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(new Reading(force, moved, base, forceError, movedError, extras))
        : Optional.empty();
  }

  private void note(Finding finding) {
    Matcher field = FIELD.matcher(finding.field());
    if (!field.matches()) {
      throw new IllegalStateException("no field of a pull test: " + finding.field());
    }
    Source source = sources.get(Integer.parseInt(field.group(1)));
    ObjectReader object =
        field.group(2) == null
            ? source.test()
            : source.readings().get(Integer.parseInt(field.group(2)));
    object
        .problems()
        .add(finding.severity(), object.at(field.group(3)), object.subject(), finding.words());
  }
}
