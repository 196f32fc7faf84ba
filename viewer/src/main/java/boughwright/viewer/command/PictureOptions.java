// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.viewer.picture.PictureSize;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** How large pictures are, and where they may be written. What is drawn each verb says itself. */
final class PictureOptions {
  private static final Pattern SIZE = Pattern.compile("([0-9]{1,6})[xX\u00D7]([0-9]{1,6})");

  @Option(
      names = "--size",
      paramLabel = "WxH",
      order = 21,
      description = "Width and height of a picture in pixels, such as 1800x1200.")
  private String size;

  /**
   * A picture to be written.
   *
   * @param file where to
   * @param size its size, where one was given
   */
  record Wanted(Path file, Optional<PictureSize> size) {
    String name() {
      return file.toString();
    }

    PictureSize pixels() {
      return size.orElse(PictureSize.DEFAULT);
    }
  }

  boolean isSizeGiven() {
    return size != null;
  }

  /**
   * The picture that is to be written.
   *
   * @param name what the person gave; null for none
   * @param input the file that is read
   */
  Optional<Wanted> read(String name, Optional<Path> input, Faults faults) {
    needsPicture("--size", isSizeGiven() && name == null, faults);
    Optional<PictureSize> pixels = size(faults);
    return place(name, input, faults).map(file -> new Wanted(file, pixels));
  }

  /** Notes that an option says something of a picture and none is asked for. */
  static void needsPicture(String option, boolean isVain, Faults faults) {
    if (isVain) {
      faults.add(option, "no-picture", "there is no picture", "Add --picture OUT.png");
    }
  }

  /** Where a picture goes; empty for none, and where it cannot go there. */
  static Optional<Path> place(String name, Optional<Path> input, Faults faults) {
    return name == null
        ? Optional.empty()
        : input.flatMap(read -> faults.tryTo(() -> OutputFile.forPicture(name, read)));
  }

  /** The size that was given, if it is one [pixels]. */
  Optional<PictureSize> size(Faults faults) {
    if (size == null) {
      return Optional.empty();
    }
    Matcher match = SIZE.matcher(size.strip());
    if (!match.matches()) {
      noSize(UsageFaults.quoted(size) + " is no width and height", faults);
      return Optional.empty();
    }
    try {
      return Optional.of(
          new PictureSize(Integer.parseInt(match.group(1)), Integer.parseInt(match.group(2))));
    } catch (IllegalArgumentException e) {
      noSize("a picture of " + size + " cannot be drawn", faults);
      return Optional.empty();
    }
  }

  private static void noSize(String found, Faults faults) {
    String remedy =
        "Give a size from "
            + PictureSize.SMALLEST_WIDTH
            + "x"
            + PictureSize.SMALLEST_HEIGHT
            + " to "
            + PictureSize.LARGEST
            + "x"
            + PictureSize.LARGEST
            + " pixels, such as 1800x1200";
    faults.add("--size", "no-size", found, remedy);
  }
}
