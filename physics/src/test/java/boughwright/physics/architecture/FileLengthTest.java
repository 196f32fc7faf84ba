// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Small files with one subject each. */
class FileLengthTest {
  private static final String LICENCE = "// SPDX-License-Identifier: Apache-2.0";

  @ParameterizedTest
  @CsvSource({"src/main/java, 400", "src/test/java, 600"})
  void file_isNoLongerThanTheHardStop(String folder, int most) throws IOException {
    assertThat(sources(folder)).isNotEmpty().allSatisfy(file -> lines(file, most));
  }

  private static void lines(Path file, int most) {
    assertThat(read(file)).as(file.toString()).hasSizeLessThanOrEqualTo(most);
  }

  @ParameterizedTest
  @ValueSource(strings = {"src/main/java", "src/test/java"})
  void file_startsWithItsLicence(String folder) throws IOException {
    assertThat(sources(folder))
        .isNotEmpty()
        .allSatisfy(file -> assertThat(read(file).get(0)).as("%s", file).isEqualTo(LICENCE));
  }

  @Test
  void package_saysWhatItIsFor() throws IOException {
    List<Path> folders = sources("src/main/java").stream().map(Path::getParent).distinct().toList();
    assertThat(folders)
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.resolve("package-info.java")).exists());
  }

  private static List<Path> sources(String folder) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(folder))) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }

  private static List<String> read(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
