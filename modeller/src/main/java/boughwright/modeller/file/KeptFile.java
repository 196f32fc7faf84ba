// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The content of a file that keeps a document: the text of its tree file and where it belongs.
 *
 * @param document the document
 * @param file its file, if it has one
 * @param at when it was kept
 * @param photos name of the kept file of each new photo, by the name the backdrops use
 */
record KeptFile(Document document, Optional<Path> file, Instant at, Map<String, String> photos) {
  private static final String FORMAT = "boughwright-recovery";

  private static final ObjectMapper MAPPER =
      new ObjectMapper(
          JsonFactory.builder()
              .streamReadConstraints(
                  StreamReadConstraints.builder().maxStringLength(2 * Limits.BYTES).build())
              .build());

  KeptFile {
    photos = Map.copyOf(photos);
  }

  KeptFile at(Instant now) {
    return new KeptFile(document, file, now, photos);
  }

  byte[] bytes() throws IOException {
    ObjectNode top = MAPPER.createObjectNode();
    top.put("format", FORMAT);
    top.put("kept_at", at.toString());
    file.ifPresent(path -> top.put("file", path.toString()));
    new TreeMap<>(photos).forEach(top.putObject("photos")::put);
    top.put("tree", TreeJson.text(document));
    return MAPPER.writeValueAsBytes(top);
  }

  /**
   * Reads a kept file.
   *
   * @throws IOException if it is none
   * @throws InputException if the tree in it has a fault
   */
  static KeptFile read(String source, byte[] bytes) throws IOException, InputException {
    try {
      JsonNode top = MAPPER.readTree(bytes);
      if (!FORMAT.equals(top.path("format").asText())) {
        throw new IOException("it holds no kept tree");
      }
      byte[] tree = top.path("tree").asText().getBytes(StandardCharsets.UTF_8);
      Map<String, String> photos = new TreeMap<>();
      top.path("photos")
          .properties()
          .forEach(one -> photos.put(one.getKey(), one.getValue().asText()));
      return new KeptFile(
          TreeFiles.read(source, tree).document(),
          Optional.ofNullable(top.get("file")).map(JsonNode::asText).map(Path::of),
          Instant.parse(top.path("kept_at").asText()),
          photos);
    } catch (DateTimeException | InvalidPathException e) {
      throw new IOException("it holds no kept tree", e);
    }
  }

  static String digest(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(digest).substring(0, 32);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
