// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Fields of a file that this version does not know, kept so that saving loses nothing.
 *
 * <p>Values are text, {@code BigDecimal}, {@code Boolean}, lists and maps of these, and {@code
 * null}; the order of the file is kept. {@code Map.copyOf} allows neither nulls nor order.
 */
public final class Extras {
  private Extras() {}

  /** An unmodifiable copy, all the way down. */
  public static Map<String, Object> copyOf(Map<String, Object> fields) {
    Map<String, Object> copy = new LinkedHashMap<>();
    fields.forEach((name, value) -> copy.put(name, copyOfValue(value)));
    return Collections.unmodifiableMap(copy);
  }

  private static Object copyOfValue(Object value) {
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> copy = new LinkedHashMap<>();
      map.forEach((name, inner) -> copy.put((String) name, copyOfValue(inner)));
      return Collections.unmodifiableMap(copy);
    }
    if (value instanceof List<?> list) {
      List<Object> copy = new ArrayList<>();
      list.forEach(inner -> copy.add(copyOfValue(inner)));
      return Collections.unmodifiableList(copy);
    }
    return value;
  }
}
