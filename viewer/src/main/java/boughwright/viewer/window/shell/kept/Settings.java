// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell.kept;

import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Tone;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * How a person likes the window, and what they worked on.
 *
 * @param tone light or dark
 * @param textSize how large text is
 * @param units units of display
 * @param recent files opened or saved, the last first
 * @param tourSeen whether the first tour was shown
 * @param places where the last window stood, by screen
 */
public record Settings(
    Tone tone,
    TextSize textSize,
    DisplayUnits units,
    List<Path> recent,
    boolean tourSeen,
    Map<String, Place> places) {
  /** Files that are remembered. */
  public static final int MOST_RECENT = 10;

  private static final int MOST_SCREENS = 20;

  /**
   * Where a window stands [user pixels of its screen].
   *
   * @param whole whether it fills its screen, and stands so when it does not
   */
  public record Place(int x, int y, int width, int height, boolean whole) {}

  public static final Settings FIRST =
      new Settings(Tone.LIGHT, TextSize.USUAL, DisplayUnits.USUAL, List.of(), false, Map.of());

  public Settings {
    Objects.requireNonNull(tone, "tone");
    Objects.requireNonNull(textSize, "textSize");
    Objects.requireNonNull(units, "units");
    recent = recent.stream().distinct().limit(MOST_RECENT).toList();
    places = Map.copyOf(places);
  }

  public Settings with(Tone other) {
    return new Settings(other, textSize, units, recent, tourSeen, places);
  }

  public Settings with(TextSize other) {
    return new Settings(tone, other, units, recent, tourSeen, places);
  }

  public Settings with(DisplayUnits other) {
    return new Settings(tone, textSize, other, recent, tourSeen, places);
  }

  /** With a file in front of the recent ones. */
  public Settings withRecent(Path file) {
    Path whole = file.toAbsolutePath().normalize();
    return new Settings(
        tone,
        textSize,
        units,
        Stream.concat(Stream.of(whole), recent.stream()).distinct().toList(),
        tourSeen,
        places);
  }

  /** Without a file that is gone. */
  public Settings withoutRecent(Path file) {
    return new Settings(
        tone,
        textSize,
        units,
        recent.stream().filter(known -> !known.equals(file)).toList(),
        tourSeen,
        places);
  }

  /** With the place of a window on a screen. */
  public Settings withPlace(String screen, Place place) {
    Map<String, Place> known = new LinkedHashMap<>();
    if (places.size() < MOST_SCREENS) {
      known.putAll(places);
    }
    known.put(screen, place);
    return new Settings(tone, textSize, units, recent, tourSeen, known);
  }

  public Settings withTourSeen() {
    return new Settings(tone, textSize, units, recent, true, places);
  }
}
