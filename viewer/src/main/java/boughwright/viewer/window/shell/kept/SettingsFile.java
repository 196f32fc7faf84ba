// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell.kept;

import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Tone;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Settings on disk. What is missing or broken counts as never set; a disk that refuses costs only
 * the memory.
 */
public final class SettingsFile {
  private static final String NAME = "settings.json";

  /** More than any settings need [bytes]. */
  private static final long MOST_BYTES = 1_000_000;

  private final Path folder;

  public SettingsFile(Path folder) {
    this.folder = folder;
  }

  /** The settings as they were kept last; those of a first start where there are none. */
  public Settings read() {
    Path file = folder.resolve(NAME);
    try {
      if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
        return Settings.FIRST;
      }
      JsonNode node = new ObjectMapper().readTree(Files.readAllBytes(file));
      return node == null || !node.isObject() ? Settings.FIRST : settings(node);
    } catch (IOException | SecurityException e) {
      return Settings.FIRST;
    }
  }

  private static Settings settings(JsonNode node) {
    return new Settings(
        one(Tone.class, node.path("tone"), Tone.LIGHT),
        TextSize.of(node.path("text_percent").asInt(0)),
        new DisplayUnits(
            one(LengthUnit.class, node.path("length"), LengthUnit.MILLIMETRE),
            one(ForceUnit.class, node.path("force"), ForceUnit.NEWTON)),
        paths(node.path("recent")),
        node.path("tour_seen").asBoolean(false),
        places(node.path("places")));
  }

  private static Map<String, Settings.Place> places(JsonNode node) {
    Map<String, Settings.Place> places = new LinkedHashMap<>();
    node.properties()
        .forEach(
            one -> {
              JsonNode at = one.getValue();
              if (at.path("width").asInt() > 0 && at.path("height").asInt() > 0) {
                places.put(
                    one.getKey(),
                    new Settings.Place(
                        at.path("x").asInt(),
                        at.path("y").asInt(),
                        at.path("width").asInt(),
                        at.path("height").asInt(),
                        at.path("whole").asBoolean(false)));
              }
            });
    return places;
  }

  private static <T extends Enum<T>> T one(Class<T> type, JsonNode node, T otherwise) {
    for (T value : type.getEnumConstants()) {
      if (word(value).equals(node.asText())) {
        return value;
      }
    }
    return otherwise;
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private static List<Path> paths(JsonNode node) {
    List<Path> paths = new ArrayList<>();
    for (JsonNode one : node) {
      try {
        Path path = Path.of(one.asText());
        if (path.isAbsolute()) {
          paths.add(path);
        }
      } catch (InvalidPathException e) {
        // a name from another system, which no file here can have
        continue;
      }
    }
    return paths;
  }

  /**
   * Keeps settings.
   *
   * @return whether the disk took them
   */
  public boolean write(Settings settings) {
    try {
      Files.createDirectories(folder);
      replace(
          new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsBytes(json(settings)));
      return true;
    } catch (IOException | SecurityException e) {
      return false;
    }
  }

  /** A disk that takes only a part of them keeps the settings before, and nothing else. */
  private void replace(byte[] bytes) throws IOException {
    Path fresh = folder.resolve(NAME + ".new");
    try {
      Files.write(fresh, bytes);
      Files.move(fresh, folder.resolve(NAME), StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private static ObjectNode json(Settings settings) {
    ObjectNode node = new ObjectMapper().createObjectNode();
    node.put("tone", word(settings.tone()));
    node.put("text_percent", settings.textSize().percent());
    node.put("length", word(settings.units().length()));
    node.put("force", word(settings.units().force()));
    ArrayNode recent = node.putArray("recent");
    settings.recent().forEach(path -> recent.add(path.toString()));
    node.put("tour_seen", settings.tourSeen());
    ObjectNode places = node.putObject("places");
    settings
        .places()
        .forEach(
            (screen, at) ->
                places
                    .putObject(screen)
                    .put("x", at.x())
                    .put("y", at.y())
                    .put("width", at.width())
                    .put("height", at.height())
                    .put("whole", at.whole()));
    return node;
  }
}
