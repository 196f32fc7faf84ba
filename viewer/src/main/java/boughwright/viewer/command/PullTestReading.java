// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.PullTest.Reading;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.units.ForceUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Reads a pull test from what a person wrote down; notes a fault for each thing amiss. */
final class PullTestReading {
  private final PullTestOptions options;
  private final Faults faults;
  private final OptionValues values;

  PullTestReading(PullTestOptions options, Faults faults) {
    this.options = options;
    this.faults = faults;
    values = new OptionValues(faults);
  }

  /**
   * A test and the pulls as they were given.
   *
   * @param test the test
   * @param forces one for each reading
   */
  record Given(PullTest test, List<PullForce> forces) {
    Given {
      forces = List.copyOf(forces);
    }
  }

  /** The test; empty, with faults noted, if anything is amiss. */
  Optional<Given> read(Optional<Tree> tree) {
    int before = faults.all().size();
    Optional<String> segment = segment(tree);
    OptionalDouble along = along();
    Optional<PullForce> first =
        force(
            "",
            options.hung,
            options.scale,
            options.force,
            "Give --hung-kg, --scale-kg or --force-N");
    Optional<Direction3> direction = direction(first);
    Optional<Reading> reading = reading("", first, options.moved, options.baseMoved);
    Optional<LocalDate> day = day();
    List<PullForce> forces = new ArrayList<>(first.stream().toList());
    List<Reading> readings = new ArrayList<>(reading.stream().toList());
    second(forces, readings);
    if (faults.all().size() > before || tree.isEmpty()) {
      return Optional.empty();
    }
    PullTest test =
        new PullTest(
            freeId(tree.get()),
            segment.orElseThrow(),
            along.orElseThrow(),
            direction.orElseThrow(),
            readings,
            day,
            Map.of());
    return Optional.of(new Given(test, forces));
  }

  private Optional<String> segment(Optional<Tree> tree) {
    if (!values.isGiven("--segment", options.segment, "Give the id of the segment you pulled")) {
      return Optional.empty();
    }
    tree.ifPresent(one -> SegmentChoice.check(one, options.segment, faults));
    return Optional.of(options.segment);
  }

  private OptionalDouble along() {
    String where = "Give where on the segment you pulled, from 0 to 1";
    if (!values.isGiven("--along", options.along, where)) {
      return OptionalDouble.empty();
    }
    return values.number(
        options.along, new OptionValues.Range("--along", 0, 1, "a fraction of its length"));
  }

  private Optional<PullForce> force(
      String second, String hung, String scale, String newtons, String remedy) {
    List<PullForce> given = new ArrayList<>();
    add(given, "--" + second + "hung-kg", hung, ForceUnit.KILOGRAM_FORCE);
    add(given, "--" + second + "scale-kg", scale, ForceUnit.KILOGRAM_FORCE);
    add(given, "--" + second + "force-N", newtons, ForceUnit.NEWTON);
    long said = Stream.of(hung, scale, newtons).filter(s -> s != null).count();
    if (said != 1) {
      faults.add(
          "--" + second + "force-N",
          said == 0 ? "no-value" : "two-forces",
          said == 0 ? "the pull is not given" : "the pull is given more than once",
          said == 0 ? remedy : "Keep one of the three");
    }
    return said == 1 ? given.stream().findFirst() : Optional.empty();
  }

  private void add(List<PullForce> given, String option, String text, ForceUnit unit) {
    if (text == null) {
      return;
    }
    boolean newtons = unit == ForceUnit.NEWTON;
    OptionValues.Range range =
        newtons
            ? new OptionValues.Range(option, 0.01, 2000, "the pull in newtons")
            : new OptionValues.Range(option, 0.001, 2000, "the pull in kilograms");
    values
        .number(text, range)
        .ifPresent(typed -> given.add(new PullForce(option, option.contains("hung"), unit, typed)));
  }

  private Optional<Direction3> direction(Optional<PullForce> force) {
    if (options.direction == null) {
      if (force.isPresent() && !force.get().hung()) {
        values.isGiven("--direction", null, "Give x,y,z along the pull; 0,0,-1 is straight down");
      }
      return Optional.of(Direction3.UP.opposite());
    }
    return values.direction(options.direction, "--direction");
  }

  private void second(List<PullForce> forces, List<Reading> readings) {
    boolean any =
        Stream.of(
                options.secondHung,
                options.secondScale,
                options.secondForce,
                options.secondMoved,
                options.secondBaseMoved)
            .anyMatch(text -> text != null);
    if (!any) {
      return;
    }
    Optional<PullForce> force =
        force(
            "second-",
            options.secondHung,
            options.secondScale,
            options.secondForce,
            "Give the second load too, with --second-hung-kg, --second-scale-kg or"
                + " --second-force-N");
    force.ifPresent(forces::add);
    reading("second-", force, options.secondMoved, options.secondBaseMoved)
        .ifPresent(readings::add);
  }

  private Optional<Reading> reading(
      String second, Optional<PullForce> force, String moved, String baseMoved) {
    String option = "--" + second + "moved-mm";
    if (!values.isGiven(option, moved, "Give how far the point moved")) {
      return Optional.empty();
    }
    OptionalDouble far =
        values.length(moved, new OptionValues.Range(option, 0.01, 5000, "how far the point moved"));
    String baseOption = "--" + second + "base-moved-mm";
    OptionalDouble base =
        baseMoved == null
            ? OptionalDouble.of(0)
            : values.length(
                baseMoved,
                new OptionValues.Range(
                    baseOption, -5000, 5000, "how far the start of the branch moved"));
    OptionalDouble movedError = movedError();
    OptionalDouble forceError = forceError(force);
    if (far.isEmpty() || base.isEmpty() || movedError.isEmpty() || forceError.isEmpty()) {
      return Optional.empty();
    }
    if (!(Math.abs(base.getAsDouble()) < far.getAsDouble())) {
      faults.add(
          baseOption,
          "nothing-bent",
          "the start of the branch moved as far as the point: the branch itself did not bend",
          "Read both again, each from its own mark");
      return Optional.empty();
    }
    return force.map(
        pull ->
            new Reading(
                pull.newtons(),
                far.getAsDouble(),
                base.getAsDouble(),
                forceError.getAsDouble(),
                movedError.getAsDouble()));
  }

  private OptionalDouble movedError() {
    return options.movedError == null
        ? OptionalDouble.of(Reading.USUAL_MOVED_ERROR)
        : values.length(
            options.movedError,
            new OptionValues.Range("--moved-error-mm", 0.001, 100, "how well you read"));
  }

  private OptionalDouble forceError(Optional<PullForce> force) {
    if (options.forceError == null) {
      return OptionalDouble.of(
          force
              .map(PullForce::error)
              .orElse(OptionalDouble.empty())
              .orElse(Reading.USUAL_FORCE_ERROR));
    }
    OptionValues.Range range =
        new OptionValues.Range("--force-error-pct", 0, 100, "how true the scale is, in per cent");
    OptionalDouble percent = values.number(options.forceError, range);
    return percent.isPresent() ? OptionalDouble.of(percent.getAsDouble() / 100) : percent;
  }

  private Optional<LocalDate> day() {
    if (options.doneOn == null) {
      return Optional.of(LocalDate.now());
    }
    return values.day(options.doneOn, "--done-on");
  }

  /** The first of pt1, pt2, ... that no test of the tree has. */
  private static String freeId(Tree tree) {
    List<String> taken = tree.pullTests().stream().map(PullTest::id).toList();
    int n = 1;
    while (taken.contains("pt" + n)) {
      n++;
    }
    return "pt" + n;
  }
}
