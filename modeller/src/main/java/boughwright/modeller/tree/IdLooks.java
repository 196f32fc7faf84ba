// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Finding.Words;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Warns of ids that a person cannot tell apart or type: they are kept apart all the same. */
final class IdLooks {
  private IdLooks() {}

  static List<Finding> findings(List<Link> links) {
    List<Finding> findings = new ArrayList<>();
    Map<String, String> seen = new HashMap<>();
    Set<String> done = new HashSet<>();
    for (int i = 0; i < links.size(); i++) {
      String id = links.get(i).id();
      if (!done.add(id)) {
        continue;
      }
      if (hides(id)) {
        String found = "the id \"" + shown(id) + "\" holds a character that cannot be seen";
        findings.add(warning(List.of(id), i, "hidden-character", found));
      }
      String twin = seen.putIfAbsent(looks(id), id);
      if (twin != null) {
        String found =
            String.format(
                Locale.ROOT, "the ids \"%s\" and \"%s\" look alike but are two segments", twin, id);
        findings.add(warning(List.of(id, twin), i, "ids-look-alike", found));
      }
    }
    return findings;
  }

  private static Finding warning(List<String> ids, int i, String kind, String found) {
    String remedy = "Give it an id of plain letters and digits that differs from all others";
    return Finding.warning(ids, "segments[" + i + "].id", new Words(kind, found, remedy));
  }

  /** True if an id is letters, digits and signs of ASCII: nothing hidden, nothing composed. */
  private static boolean isPlain(String id) {
    for (int i = 0; i < id.length(); i++) {
      if (id.charAt(i) <= ' ' || id.charAt(i) > '~') {
        return false;
      }
    }
    return true;
  }

  private static boolean hides(String id) {
    if (isPlain(id)) {
      return false;
    }
    return !id.strip().equals(id) || id.codePoints().anyMatch(IdLooks::isHidden);
  }

  private static boolean isHidden(int point) {
    return VisibleText.isHidden(point) || Character.getType(point) == Character.FORMAT;
  }

  private static String shown(String id) {
    StringBuilder out = new StringBuilder();
    id.codePoints()
        .forEach(
            point ->
                out.append(
                    isHidden(point)
                        ? String.format(Locale.ROOT, "<U+%04X>", point)
                        : Character.toString(point)));
    return out.toString();
  }

  private static String looks(String id) {
    if (isPlain(id)) {
      return id.toLowerCase(Locale.ROOT);
    }
    StringBuilder seen = new StringBuilder(id.length());
    id.codePoints().filter(point -> !isHidden(point)).forEach(seen::appendCodePoint);
    return Normalizer.normalize(seen, Normalizer.Form.NFKC).strip().toLowerCase(Locale.ROOT);
  }
}
