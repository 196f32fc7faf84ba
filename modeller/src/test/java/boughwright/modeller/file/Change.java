// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A valid tree file in which a test changes a thing or two. */
final class Change {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final JsonNode root;

  private Change(String name) {
    try {
      root = MAPPER.readTree(Sample.text(name));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Five segments, a plan with a cut, two guy-lines and a weight. */
  static Change of() {
    return new Change("cases.tree.json");
  }

  /** Sets the value at a JSON pointer; the value is JSON. */
  Change set(String pointer, String json) {
    int last = pointer.lastIndexOf('/');
    JsonNode holder = root.at(pointer.substring(0, last));
    String name = pointer.substring(last + 1);
    if (holder instanceof ObjectNode object) {
      object.set(name, json(json));
    } else if (name.equals("-")) {
      ((ArrayNode) holder).add(json(json));
    } else {
      ((ArrayNode) holder).set(Integer.parseInt(name), json(json));
    }
    return this;
  }

  Change remove(String pointer) {
    int last = pointer.lastIndexOf('/');
    JsonNode holder = root.at(pointer.substring(0, last));
    String name = pointer.substring(last + 1);
    if (holder instanceof ObjectNode object) {
      object.remove(name);
    } else {
      ((ArrayNode) holder).remove(Integer.parseInt(name));
    }
    return this;
  }

  /** Multiplies every length of the tree's segments. */
  Change scale(double factor) {
    for (JsonNode segment : segments()) {
      ObjectNode object = (ObjectNode) segment;
      for (String name : new String[] {"caliper_start_mm", "caliper_end_mm"}) {
        object.put(name, object.get(name).asDouble() * factor);
      }
      for (String name : new String[] {"start_mm", "end_mm"}) {
        for (int axis = 0; object.has(name) && axis < 3; axis++) {
          ArrayNode point = (ArrayNode) object.get(name);
          point.set(axis, MAPPER.getNodeFactory().numberNode(point.get(axis).asDouble() * factor));
        }
      }
    }
    return this;
  }

  ArrayNode segments() {
    return (ArrayNode) root.get("segments");
  }

  private static JsonNode json(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(text, e);
    }
  }

  String text() {
    return root.toPrettyString();
  }

  byte[] bytes() {
    return text().getBytes(StandardCharsets.UTF_8);
  }
}
