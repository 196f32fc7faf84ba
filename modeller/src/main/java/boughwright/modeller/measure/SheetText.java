// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;

/** Turns the bytes of a sheet into text: UTF-8, or Windows-1252 with a remark. */
final class SheetText {
  private static final char BYTE_ORDER_MARK = '\uFEFF';
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  /** Several bytes that make one UTF-8 character, seen byte by byte. */
  private static final Pattern MULTI_BYTE =
      Pattern.compile("[\u00C2-\u00DF][\u0080-\u00BF]|[\u00E0-\u00F4][\u0080-\u00BF]{2}");

  /** These two bytes open texts in UTF-16 and stand in no Western word measured here. */
  private static final Pattern NEVER_WESTERN = Pattern.compile("[\u00FE\u00FF]");

  private static final String REMEDY = "Save the sheet again as \"CSV UTF-8\"";

  private SheetText() {}

  static String decode(byte[] bytes, SheetProblems problems) throws InputException {
    Place whole = Place.of(problems.source());
    for (byte b : bytes) {
      if (b == 0) {
        throw problems.stop(
            whole,
            "not-text",
            "this is UTF-16 text or no text at all: it holds zero bytes",
            REMEDY);
      }
    }
    CharBuffer out = CharBuffer.allocate(bytes.length);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    String text =
        result.isError() ? western(bytes, in.position(), problems) : out.flip().toString();
    String body = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    if (body.isBlank()) {
      throw problems.stop(
          whole, "empty-file", "the sheet is empty", "Fill in a copy of the tape sheet template");
    }
    return body;
  }

  private static String western(byte[] bytes, int bad, SheetProblems problems)
      throws InputException {
    String raw = new String(bytes, StandardCharsets.ISO_8859_1);
    int line = 1 + (int) raw.substring(0, bad).chars().filter(sign -> sign == '\n').count();
    String found =
        "byte "
            + (bad + 1)
            + String.format(Locale.ROOT, " (%02X)", bytes[bad])
            + " is not UTF-8 text";
    if (MULTI_BYTE.matcher(raw).find() || NEVER_WESTERN.matcher(raw).find()) {
      throw problems.stop(problems.place(line, ""), "not-utf-8", found, REMEDY);
    }
    try {
      String text = WINDOWS.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      problems.warn(
          problems.place(line, ""),
          "not-utf-8",
          found + ", so the sheet is read as Windows-1252: this line says " + lineAt(text, bad),
          REMEDY + " if that is not what it should say");
      return text;
    } catch (CharacterCodingException e) {
      throw problems.stop(problems.place(line, ""), "not-utf-8", found, REMEDY);
    }
  }

  /** The text of the line round a place, a few words of it. */
  private static String lineAt(String text, int at) {
    int most = 30;
    int from = Math.max(text.lastIndexOf('\n', at) + 1, at - most);
    int end = text.indexOf('\n', at);
    int to = Math.min(end < 0 ? text.length() : end, at + most);
    return '"' + text.substring(from, to).strip() + '"';
  }
}
