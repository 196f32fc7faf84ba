// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import com.fasterxml.jackson.core.StreamReadConstraints;
import java.util.Locale;

/**
 * The largest tree file that is read, so that a wrong file is refused instead of filling memory.
 */
final class Limits {
  /** Bytes of a file. */
  static final int BYTES = 16 << 20;

  /** Segments of a tree. */
  static final int SEGMENTS = 50_000;

  /** Plans of a tree. */
  static final int PLANS = 100;

  /** Fronts a person marked. */
  static final int FRONTS = 1_000;

  /** Guy-lines, hung weights, coils and the like of one proposal, and stages of a plan, each. */
  static final int PARTS = 100;

  /** Pull tests of a tree. */
  static final int TESTS = 1_000;

  /** Points beside a tree that lines can be tied to. */
  static final int ANCHORS = 1_000;

  private static final int NESTING = 60;
  private static final int NUMBER = 100;
  private static final int TEXT = 100_000;
  private static final int FIELD_NAME = 1_000;
  private static final int TOKENS = 3_000_000;

  private Limits() {}

  static StreamReadConstraints constraints() {
    return StreamReadConstraints.builder()
        .maxDocumentLength(BYTES)
        .maxNestingDepth(NESTING)
        .maxNumberLength(NUMBER)
        .maxStringLength(TEXT)
        .maxNameLength(FIELD_NAME)
        .maxTokenCount(TOKENS)
        .build();
  }

  /** The limits as words for a person. */
  static String words() {
    return String.format(
        Locale.ROOT,
        "A tree file holds at most %d MB, %,d segments, %d levels of brackets, %,d characters in a"
            + " text and %d in a number",
        BYTES >> 20,
        SEGMENTS,
        NESTING,
        TEXT,
        NUMBER);
  }
}
