// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.tree.Finding.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns values of fields that are not known into plain Java values that can be kept. */
final class ExtraValues {
  private ExtraValues() {}

  /** Text, {@code Boolean}, {@code BigDecimal}, list, map, or null; numbers keep their digits. */
  static Object of(Value value, String subject, ProblemList problems) {
    if (value instanceof Value.Fields fields) {
      Map<String, Object> map = new LinkedHashMap<>();
      fields.members().forEach((name, inner) -> map.put(name, of(inner, subject, problems)));
      return map;
    }
    if (value instanceof Value.Items items) {
      List<Object> list = new ArrayList<>();
      items.values().forEach(inner -> list.add(of(inner, subject, problems)));
      return list;
    }
    if (value instanceof Value.Text text) {
      return text.text();
    }
    if (value instanceof Value.Flag flag) {
      return flag.on();
    }
    return value instanceof Value.Numeral number ? number(number, subject, problems) : null;
  }

  private static BigDecimal number(Value.Numeral number, String subject, ProblemList problems) {
    boolean readable = Double.isFinite(Double.parseDouble(number.digits()));
    try {
      if (readable) {
        return new BigDecimal(number.digits());
      }
    } catch (NumberFormatException e) {
      readable = false;
    }
    String found = Value.Text.quoted(number.digits()) + " is beyond every number that can be kept";
    problems.fault(number, subject, new Words("too-large", found, "Correct the number"));
    return BigDecimal.ZERO;
  }
}
