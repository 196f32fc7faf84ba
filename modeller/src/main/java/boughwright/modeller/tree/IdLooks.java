// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.problem.Severity;
import boughwright.modeller.problem.VisibleText;
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
        String found = "the id \"" + id + "\" holds a character that cannot be seen";
        findings.add(warning(List.of(id), i, "hidden-character", found));
      }
      String twin = seen.putIfAbsent(looks(id), id);
      if (twin != null) {
        String found =
            String.format("the ids \"%s\" and \"%s\" look alike but are two segments", twin, id);
        findings.add(warning(List.of(id, twin), i, "ids-look-alike", found));
      }
    }
    return findings;
  }

  private static Finding warning(List<String> ids, int i, String kind, String found) {
    String remedy = "Give it an id of plain letters and digits that differs from all others";
    return new Finding(Severity.WARNING, ids, "segments[" + i + "].id", kind, found, remedy);
  }

  private static boolean hides(String id) {
    return !id.strip().equals(id) || id.codePoints().anyMatch(IdLooks::isHidden);
  }

  private static boolean isHidden(int point) {
    return VisibleText.isHidden(point) || Character.getType(point) == Character.FORMAT;
  }

  private static String looks(String id) {
    StringBuilder seen = new StringBuilder(id.length());
    id.codePoints().filter(point -> !isHidden(point)).forEach(seen::appendCodePoint);
    return Normalizer.normalize(seen, Normalizer.Form.NFKC).strip().toLowerCase(Locale.ROOT);
  }
}
