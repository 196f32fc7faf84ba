// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import boughwright.modeller.edit.NewTree;
import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Backdrop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tree is saved together with photos that are not beside it yet. */
class PhotoSaveTest {
  private static final byte[] PICTURE = {1, 2, 3};
  private static final byte[] OTHER = {4, 5};

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void nameFile() {
    file = folder.resolve("larch.tree.json");
  }

  private static Document document(String... photos) throws InputException {
    return NewTree.document("Invented larch", "larix-decidua")
        .withBackdrops(
            Stream.of(photos)
                .map(name -> new Backdrop(name, 0, OptionalDouble.empty(), 1, 2, 0.5, Map.of()))
                .toList());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(one -> !one.equals(folder))
          .map(one -> folder.relativize(one).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  @Test
  void photos_areSavedBesideTheTree() throws Exception {
    Map<String, byte[]> photos =
        Map.of("front.jpg", PICTURE, "views/side.png", OTHER, "unused.jpg", OTHER);
    Document saved =
        TreeFiles.write(document("front.jpg", "views/side.png", "there.jpg"), file, photos);
    assertThat(names()).containsExactly("front.jpg", "larch.tree.json", "views", "views/side.png");
    assertThat(Files.readAllBytes(folder.resolve("front.jpg"))).isEqualTo(PICTURE);
    assertThat(TreeFiles.read(file).document()).isEqualTo(saved);
    assertThat(TreeFiles.photo(file, saved.backdrops().get(1)))
        .isEqualTo(folder.resolve("views").resolve("side.png"));
  }

  @Test
  void photo_getsAnotherName_whenItsNameIsTaken() throws Exception {
    Files.write(folder.resolve("front.jpg"), OTHER);
    Files.write(folder.resolve("front-2.jpg"), OTHER);
    Document saved = TreeFiles.write(document("front.jpg"), file, Map.of("front.jpg", PICTURE));
    assertThat(saved.backdrops().get(0).photo()).isEqualTo("front-3.jpg");
    assertThat(TreeFiles.read(file).document()).isEqualTo(saved);
    assertThat(Files.readAllBytes(folder.resolve("front.jpg"))).isEqualTo(OTHER);
    assertThat(Files.readAllBytes(folder.resolve("front-3.jpg"))).isEqualTo(PICTURE);
  }

  @Test
  void photo_isNotCopied_whenItIsThereAlready() throws Exception {
    Files.write(folder.resolve("front.jpg"), PICTURE);
    Document saved = TreeFiles.write(document("front.jpg"), file, Map.of("front.jpg", PICTURE));
    assertThat(saved).isEqualTo(document("front.jpg"));
    assertThat(names()).containsExactly("front.jpg", "larch.tree.json");
  }

  @Test
  void everythingIsAsItWas_whenTheTreeCannotBeSaved() throws Exception {
    Files.writeString(
        file, "{\"format\": \"boughwright-tree\", \"version\": 2, \"name\": \"newer\"}");
    byte[] before = Files.readAllBytes(file);
    Map<String, byte[]> photos = Map.of("front.jpg", PICTURE, "views/side.png", OTHER);
    assertThatThrownBy(() -> TreeFiles.write(document("front.jpg", "views/side.png"), file, photos))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("newer version");
    assertThat(names()).containsExactly("larch.tree.json");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void everythingIsAsItWas_whenAPhotoCannotBeSaved() throws Exception {
    TreeFiles.write(document(), file);
    byte[] before = Files.readAllBytes(file);
    Files.writeString(folder.resolve("views"), "a file where a folder is needed");
    Document changed = TreeEdits.name("Other").of(document("front.jpg", "views/side.png"));
    Map<String, byte[]> photos = Map.of("front.jpg", PICTURE, "views/side.png", OTHER);
    assertThatThrownBy(() -> TreeFiles.write(changed, file, photos))
        .isInstanceOf(InputException.class)
        .satisfies(e -> assertThat(e.getMessage()).contains("not saved").doesNotContain("\n"));
    assertThat(names()).containsExactly("larch.tree.json", "views");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void photo_isNeitherReadNorWritten_throughALinkOutOfTheFolder(@TempDir Path elsewhere)
      throws Exception {
    assumeThat(linked(folder.resolve("views"), elsewhere)).isTrue();
    Document document = document("views/side.png");
    assertThatThrownBy(() -> TreeFiles.photo(file, document.backdrops().get(0)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("link");
    assertThatThrownBy(() -> TreeFiles.write(document, file, Map.of("views/side.png", PICTURE)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("link");
    assertThat(Files.list(elsewhere)).isEmpty();
    assertThat(names()).containsExactly("views");
  }

  private static boolean linked(Path link, Path target) {
    try {
      Files.createSymbolicLink(link, target);
      return true;
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }
}
