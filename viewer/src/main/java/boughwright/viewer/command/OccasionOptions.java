// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.tree.Hemisphere;
import boughwright.physics.trial.Said;
import boughwright.physics.wood.WarmDay;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** Options on when the bend is made and what the tree has been through. */
final class OccasionOptions {
  private static final int MOST_MONTHS = 1200;

  /** Weather in which someone stands at a bench [°C]. */
  private static final double COLDEST = -25;

  private static final double HOTTEST = 50;

  @Option(
      names = "--on",
      paramLabel = "DATE",
      order = 50,
      description = "The day of the bend, such as 2026-03-15; today by default.")
  private String on;

  @Option(
      names = "--hemisphere",
      paramLabel = "north|south",
      order = 51,
      description = "Where the tree grows. What is said here counts, not the file.")
  private String hemisphere;

  @Option(
      names = "--months-since-repotting",
      paramLabel = "N",
      order = 52,
      description = "Whole months from the last repotting to the day of the bend.")
  private String repotting;

  @Option(
      names = "--months-since-collecting",
      paramLabel = "N",
      order = 53,
      description = "The same from the day it was dug from the ground.")
  private String collecting;

  @Option(
      names = "--months-since-hard-work",
      paramLabel = "N",
      order = 54,
      description = "The same from the last heavy cut or bend.")
  private String work;

  @Option(
      names = "--frost",
      order = 55,
      description = "The wood is frozen, or will freeze while it is held.")
  private boolean frost;

  @Option(
      names = "--temperature",
      paramLabel = "C",
      order = 56,
      description = "Temperature of the wood while it is bent, in degrees Celsius.")
  private String temperature;

  Said read(Faults faults) {
    LocalDate day = day(faults);
    OptionalDouble celsius = celsius(faults);
    return new Said(
        day,
        half(faults),
        before(day, "--months-since-repotting", repotting, faults),
        before(day, "--months-since-collecting", collecting, faults),
        before(day, "--months-since-hard-work", work, faults),
        frost || celsius.isPresent() && WarmDay.isTooCold(celsius.getAsDouble()),
        celsius);
  }

  private OptionalDouble celsius(Faults faults) {
    OptionValues.Range range =
        new OptionValues.Range("--temperature", COLDEST, HOTTEST, "degrees Celsius, such as 25");
    return temperature == null
        ? OptionalDouble.empty()
        : new OptionValues(faults).number(temperature, range);
  }

  private LocalDate day(Faults faults) {
    return Optional.ofNullable(on)
        .flatMap(text -> new OptionValues(faults).day(text, "--on"))
        .orElseGet(LocalDate::now);
  }

  private Optional<Hemisphere> half(Faults faults) {
    if (hemisphere == null) {
      return Optional.empty();
    }
    switch (hemisphere.strip().toLowerCase(Locale.ROOT)) {
      case "north":
        return Optional.of(Hemisphere.NORTH);
      case "south":
        return Optional.of(Hemisphere.SOUTH);
      default:
        faults.add(
            "--hemisphere",
            "no-hemisphere",
            UsageFaults.quoted(hemisphere) + " is neither north nor south",
            "Give north or south");
        return Optional.empty();
    }
  }

  private static Optional<LocalDate> before(
      LocalDate day, String option, String text, Faults faults) {
    if (text == null) {
      return Optional.empty();
    }
    OptionValues.Range range =
        new OptionValues.Range(option, 0, MOST_MONTHS, "a whole number of months, such as 8");
    long months = new OptionValues(faults).whole(text, range, 0);
    return Optional.of(day.minusMonths(months));
  }
}
