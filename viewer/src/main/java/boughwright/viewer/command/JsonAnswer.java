// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Function;

/** Builds answers for programs. */
final class JsonAnswer {
  /** More digits than the solver knows, fewer than show the rounding of a change of unit. */
  private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private JsonAnswer() {}

  static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  static ArrayNode array() {
    return JsonNodeFactory.instance.arrayNode();
  }

  static ArrayNode words(List<String> words) {
    ArrayNode node = array();
    words.forEach(node::add);
    return node;
  }

  /** A node for each of several things, in their order. */
  static <T> ArrayNode list(Iterable<T> things, Function<T, ? extends JsonNode> one) {
    ArrayNode node = array();
    things.forEach(thing -> node.add(one.apply(thing)));
    return node;
  }

  /** A point in millimetres. */
  static ArrayNode point(Point3 point) {
    return array()
        .add(number(1000 * point.x()))
        .add(number(1000 * point.y()))
        .add(number(1000 * point.z()));
  }

  static ArrayNode direction(Direction3 direction) {
    return array().add(number(direction.x())).add(number(direction.y())).add(number(direction.z()));
  }

  /**
   * A number in the unit of its key.
   *
   * @throws IllegalStateException if it is not finite: a defect, which no reader should get to see
   */
  static BigDecimal number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalStateException("an answer holds " + value);
    }
    BigDecimal bare = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
    boolean plain = bare.scale() <= 0 && bare.precision() - bare.scale() <= 15;
    return plain ? bare.setScale(0) : bare;
  }

  /** The answer as text that ends with a line break. */
  static String text(JsonNode node) {
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
                PrettyPrinter.DEFAULT_SEPARATORS.withObjectFieldValueSpacing(
                    Separators.Spacing.AFTER))
            .withObjectIndenter(new DefaultIndenter("  ", "\n"));
    try {
      return MAPPER.writer(printer).writeValueAsString(node) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
