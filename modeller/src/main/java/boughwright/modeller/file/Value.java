// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import java.util.List;
import java.util.Map;

/** A JSON value with the place in the file where it starts; line and column count from 1. */
sealed interface Value {
  int line();

  int column();

  /** The value in a few words, as a message shows it. */
  String words();

  /** An object; its members keep the order of the file. */
  record Fields(int line, int column, Map<String, Value> members) implements Value {
    @Override
    public String words() {
      return "an object {…}";
    }
  }

  /** A list. */
  record Items(int line, int column, List<Value> values) implements Value {
    @Override
    public String words() {
      return "a list […] of " + values.size();
    }
  }

  /** A text. */
  record Text(int line, int column, String text) implements Value {
    private static final int SHOWN = 40;

    @Override
    public String words() {
      return "the text " + quoted(text);
    }

    /** A text in quotation marks, cut short when it is long. */
    static String quoted(String text) {
      if (text.codePointCount(0, text.length()) <= SHOWN) {
        return '"' + text + '"';
      }
      return '"' + text.substring(0, text.offsetByCodePoints(0, SHOWN)) + "…\"";
    }
  }

  /** A number, as its digits stand in the file. */
  record Numeral(int line, int column, String digits) implements Value {
    @Override
    public String words() {
      return digits;
    }
  }

  /** True or false. */
  record Flag(int line, int column, boolean on) implements Value {
    @Override
    public String words() {
      return Boolean.toString(on);
    }
  }

  /** Null. */
  record Nothing(int line, int column) implements Value {
    @Override
    public String words() {
      return "null";
    }
  }
}
