// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.tree.Finding.Words;
import java.math.BigDecimal;
import java.util.Optional;

/** Tells tree files from other files, and the versions it knows from those it does not. */
final class Header {
  static final String FORMAT = "boughwright-tree";

  /** The version that is read and written. */
  static final int VERSION = 1;

  private Header() {}

  /** The fields of a tree file of a known version; empty, with one fault noted, otherwise. */
  static Optional<ObjectReader> accept(Value root, ProblemList problems) {
    if (!(root instanceof Value.Fields fields)) {
      problems.fault(
          root,
          "",
          new Words(
              "no-tree-file",
              "the file holds " + root.words() + ", a tree file holds one object {…}",
              "Give a tree file"));
      return Optional.empty();
    }
    ObjectReader top = new ObjectReader(fields, "", problems);
    Optional<Value> format = top.value("format");
    boolean ours = format.filter(value -> isText(value, FORMAT)).isPresent();
    if (!ours) {
      String found =
          format.map(value -> "format is " + value.words()).orElse("the field format is missing");
      top.fault(
          "format",
          "no-tree-file",
          found + ", a tree file has \"format\": \"" + FORMAT + "\"",
          "Give a tree file");
      return Optional.empty();
    }
    return version(top) ? Optional.of(top) : Optional.empty();
  }

  private static boolean isText(Value value, String expected) {
    return value instanceof Value.Text text && text.text().equals(expected);
  }

  private static boolean version(ObjectReader top) {
    Optional<Value> version = top.value("version");
    if (version.isEmpty()) {
      top.missing("version", "Write \"version\": " + VERSION + ", the one version known");
      return false;
    }
    int order = compare(version.get());
    if (order > 0) {
      top.fault(
          "version",
          "newer-version",
          "the file is of version " + version.get().words() + ", known is version " + VERSION,
          "Open it with a newer Boughwright; the file is left as it is");
    } else if (order < 0) {
      top.fault(
          "version",
          "unknown-version",
          "version is " + version.get().words() + ", known is version " + VERSION,
          "Write \"version\": " + VERSION + " if the file keeps to that version");
    }
    return order == 0;
  }

  private static int compare(Value version) {
    if (!(version instanceof Value.Numeral number)) {
      return -1;
    }
    double rough = Double.parseDouble(number.digits());
    boolean plain = Double.isFinite(rough) && rough != 0;
    return plain
        ? new BigDecimal(number.digits()).compareTo(BigDecimal.valueOf(VERSION))
        : Double.compare(rough, VERSION);
  }

  /** True if a value is a tree file of a version newer than this program knows. */
  static boolean isNewer(Value root) {
    return root instanceof Value.Fields fields
        && fields.members().get("format") instanceof Value.Text format
        && format.text().equals(FORMAT)
        && fields.members().containsKey("version")
        && compare(fields.members().get("version")) > 0;
  }
}
