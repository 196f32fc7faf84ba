// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files stay short. */
class FileLengthTest {

  @ParameterizedTest
  @CsvSource({"src/main/java, 400", "src/test/java, 600"})
  void files_stayUnderTheLimit(Path folder, int most) throws IOException {
    List<Path> files = javaFiles(folder);
    assertThat(files)
        .isNotEmpty()
        .allSatisfy(file -> assertThat(lines(file)).isLessThanOrEqualTo(most));
  }

  private static List<Path> javaFiles(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(path -> path.toString().endsWith(".java")).toList();
    }
  }

  private static long lines(Path file) throws IOException {
    try (Stream<String> lines = Files.lines(file)) {
      return lines.count();
    }
  }
}
