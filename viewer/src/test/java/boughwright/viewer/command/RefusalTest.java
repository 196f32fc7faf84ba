// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wrong options and files: one line per fault that says what to do, and nothing changes. */
class RefusalTest {
  @TempDir private Path folder;

  @BeforeEach
  void fillFolder() throws IOException {
    TreeFixture.branched(folder, "Refusals (invented)");
    Files.writeString(folder.resolve("empty.tree.json"), "");
    Files.writeString(folder.resolve("text.tree.json"), "not a tree");
    Files.write(
        folder.resolve("photo.tree.json"), new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 1});
    Files.writeString(
        folder.resolve("noplans.tree.json"),
        """
        {"format": "boughwright-tree", "version": 1, "name": "s", "species": "larch",
         "segments": [{"id": "t", "parent": null, "kind": "trunk", "start_mm": [0, 0, 0],
          "end_mm": [0, 0, 100], "caliper_start_mm": 20, "caliper_end_mm": 15}]}
        """);
    Files.writeString(
        folder.resolve("two.tree.json"),
        TreeFixture.branchedText("Two faults")
            .replace("\"caliper_end_mm\": 8", "\"caliper_end_mm\": -8")
            .replace("\"parent\": \"t1\"", "\"parent\": \"t9\""));
    Files.writeString(folder.resolve("sheet.csv"), "segment,parent\nt1,\n");
    Files.writeString(folder.resolve("there.tree.json"), "mine");
    Files.writeString(
        folder.resolve("good.csv"),
        "# name: Good\n# species: larch\n"
            + "segment,parent,kind,azimuth_deg,elevation_deg,length_mm,caliper_start_mm,caliper_end_mm\n"
            + "t1,,trunk,0,90,70,58,50\n");
    Files.writeString(folder.resolve("notes.png"), "notes, not a picture");
    Files.createDirectory(folder.resolve("folder.png"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          bnd F/branched.tree.json                                    | 1 | Did you mean bend
          --colour                                                    | 1 | no such option
          bend                                                        | 1 | no file is given
          bend F/branched.tree.json F/text.tree.json                  | 1 | one word too many
          bend F/nope.tree.json                                       | 1 | no such file
          bend F                                                      | 1 | folder
          bend F/empty.tree.json                                      | 1 | empty.tree.json
          bend F/text.tree.json                                       | 1 | text.tree.json:1
          bend F/photo.tree.json                                      | 1 | JPEG
          bend F/noplans.tree.json                                    | 1 | no plans
          bend F/two.tree.json                                        | 2 | t9
          bend F/branched.tree.json --plan nope                       | 1 | "a", "b"
          bend F/branched.tree.json --plan                            | 1 | --plan: has no value
          bend F/branched.tree.json --plan --json                     | 1 | --plan
          bend F/branched.tree.json --plan a --plan b                 | 1 | given twice
          bend F/branched.tree.json --proposal p1                     | 1 | --plan: "a", "b"
          bend F/branched.tree.json --plan a --proposal nope          | 1 | "p1", "p2"
          bend F/branched.tree.json --plan a --proposal p1,x,y        | 2 | no proposal "y"
          bend F/branched.tree.json --plan a --proposal p1,           | 1 | no proposal ""
          bend F/branched.tree.json --plam a                          | 1 | Did you mean --plan
          bend F/branched.tree.json --json=maybe                      | 1 | --json
          bend F/branched.tree.json --picture F/x.png                 | 1 | --plan
          bend F/branched.tree.json --plan a --picture F/x.jpg        | 1 | .png
          bend F/branched.tree.json --plan a --picture F/no/x.png     | 1 | Make the folder
          bend F/branched.tree.json --plan a --picture F/folder.png   | 1 | folder
          bend F/branched.tree.json --plan a --picture F/notes.png    | 1 | no picture
          bend F/branched.tree.json --plan a --picture F/branched.tree.json | 1 | file that is read
          bend F/branched.tree.json --plan a --size 800x600           | 1 | --picture
          bend F/branched.tree.json --plan a --picture F/x.png --size 0x0 | 1 | 640x480
          bend F/branched.tree.json --plan a --picture F/x.png --size 99999999x2 | 1 | --size
          bend F/branched.tree.json --plan a --picture F/x.png --size big | 1 | width and height
          bend F/branched.tree.json --plan a --picture F/x.png --size 800 | 1 | width and height
          bend F/nope.tree.json --size 0x0 --picture F/x.jpg          | 3 | no such file
          bend F/branched.tree.json --samples 99                      | 1 | 100 and 200000
          bend F/branched.tree.json --samples 200001                  | 1 | 100 and 200000
          bend F/branched.tree.json --samples 1000.5                  | 1 | no whole number
          bend F/branched.tree.json --samples many                    | 1 | --samples
          bend F/branched.tree.json --seed -1                         | 1 | --seed
          bend F/branched.tree.json --seed 1e300                      | 1 | --seed
          bend F/branched.tree.json --no-risk --samples 500           | 1 | --no-risk
          bend F/branched.tree.json --on 2026-02-30                   | 1 | is no date
          bend F/branched.tree.json --on 15.3.2026                    | 1 | 2026-03-15
          bend F/branched.tree.json --on +99999-01-01                 | 1 | no year
          bend F/branched.tree.json --hemisphere east                 | 1 | north or south
          bend F/branched.tree.json --months-since-repotting -3       | 1 | --months-since-repotting
          bend F/branched.tree.json --months-since-collecting 2.5     | 1 | no whole number
          bend F/branched.tree.json --months-since-hard-work x        | 1 | --months-since-hard-work
          bend F/branched.tree.json --frost=maybe                     | 1 | --frost
          bend F/branched.tree.json --on soon --samples 1 --hemisphere up | 3 | --on
          reach F/branched.tree.json --segment b1 --upright --add-to-plan b* | 1 | ends in *
          apex F/branched.tree.json --add-to-plan a                   | 1 | Give a new id
          review F/branched.tree.json --remove 1 --add-to-plan a      | 1 | --plan a, to judge
          fronts F/branched.tree.json --style briar                   | 1 | none of upright
          review F/branched.tree.json --style slantig                 | 1 | Did you mean slanting
          view F/branched.tree.json                                   | 1 | no display
          view F/branched.tree.json --screenshot F/x.png --front north | 1 | --front
          view F/branched.tree.json --screenshot F/x.png --front 1234 | 1 | -360
          view F/branched.tree.json --screenshot F/x.png --plan c     | 1 | "a", "b"
          view F/noplans.tree.json --screenshot F/x.png --plan c      | 1 | no plans
          check                                                       | 1 | no file is given
          check F/branched.tree.json F/nope.tree.json                 | 1 | no such file
          measure F/nope.csv                                          | 1 | no such file
          measure F/good.csv -o F/there.tree.json                     | 1 | --replace
          measure F/good.csv -o F/good.csv                            | 1 | file that is read
          measure F/good.csv -o F/good.json                           | 1 | .tree.json
          measure F/good.csv -o F/no/good.tree.json                   | 1 | Make the folder
          pulltest F/branched.tree.json                               | 4 | --segment
          pulltest F/nope.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 9 | 1 | no such file
          pulltest F/branched.tree.json --segment b2 --along 1 --hung-kg 1 --moved-mm 9 | 1 | Did you mean "b1"
          pulltest F/branched.tree.json --segment b1 --along 2 --hung-kg 1 --moved-mm 9 | 1 | --along
          pulltest F/branched.tree.json --segment b1 --along 1 --moved-mm 9 | 1 | pull is not given
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --force-N 9 --moved-mm 9 | 1 | more than once
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg -1 --moved-mm 9 | 1 | --hung-kg
          pulltest F/branched.tree.json --segment b1 --along 1 --force-N 5 --moved-mm 9 | 1 | --direction
          pulltest F/branched.tree.json --segment b1 --along 1 --force-N 5 --moved-mm 9 --direction 0,0 | 1 | is not three numbers
          pulltest F/branched.tree.json --segment b1 --along 1 --force-N 5 --moved-mm 9 --direction 0,0,0 | 1 | points nowhere
          pulltest F/branched.tree.json --segment b1 --along 1 --force-N 5 --moved-mm 9 --direction 0,0,x | 1 | --direction
          pulltest F/branched.tree.json --segment b1 --along 1 --force-N 5 --moved-mm 9 --direction 200,0,60 | 1 | along the branch
          pulltest F/branched.tree.json --segment b1 --along 0 --hung-kg 1 --moved-mm 9 | 1 | cannot bend
          pulltest F/branched.tree.json --segment t1 --along 0 --hung-kg 1 --moved-mm 9 | 1 | cannot bend
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 9 --base-moved-mm 9 | 1 | did not bend
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 0 | 1 | --moved-mm
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 9yd | 1 | unit
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 9 --second-moved-mm 18 | 1 | --second-force-N
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 9 --second-hung-kg 2 | 1 | --second-moved-mm
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 9 --done-on yesterday | 1 | --done-on
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 9 --moved-error-mm 0 | 1 | --moved-error-mm
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 900 | 1 | 209 mm long
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 190 | 1 | --accept
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1 --moved-mm 0.02 --moved-error-mm 0.01 | 1 | --accept
          pulltest F/branched.tree.json --segment b1 --along 1 --hung-kg 1900 --moved-mm 9 | 1 | --accept
          species nosuchwood                                          | 1 | not in the table
          branch                                                      | 4 | --species
          branch --species larch --length-mm 1e3 --calipers-mm 16 --tip-mm x | 3 | --calipers-mm
          branch --species larch --length-mm 350 --calipers-mm 16,11 --tip-mm 400 | 1 | 315
          branch --species larch --length-mm 350 --calipers-mm 16,11 --tip-mm -5 | 1 | --tip-mm
          branch --species larch --length-mm 0 --calipers-mm 16,11 --tip-mm 5 | 1 | --length-mm
          branch --species larch --length-mm 350 --calipers-mm 16,11 --tip-mm 60 --bark-mm 6 | 1 | no wood
          branch --species larch --length-mm 350 --calipers-mm 16,11 --tip-mm 60 --moe-GPa 0 | 1 | --moe-GPa
          branch --species larch --length-mm 350 --calipers-mm 16,11 --tip-mm 60 --caliper-error-mm 0 | 1 | --caliper-error-mm
          branch --species larch --length-mm 350yd --calipers-mm 16,11 --tip-mm 60 | 1 | unit
          """)
  void wrongInput_isRefused_withALinePerFault(String line, int faults, String words)
      throws IOException {
    Map<String, String> before = contents();
    Object[] args =
        Stream.of(line.strip().split(" +")).map(w -> w.replaceAll("^F(?=/|$)", path())).toArray();
    Ran ran = Ran.command(args);
    assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(ran.err().lines()).hasSize(faults);
    assertThat(ran.err())
        .contains(words)
        .doesNotContain("Exception", "\tat ", "boughwright.viewer");
    assertThat(ran.err().lines()).allSatisfy(l -> assertThat(l).matches(".+: .+[.?] ?.*"));
    assertThat(contents()).isEqualTo(before);
  }

  private String path() {
    return Matcher.quoteReplacement(folder.toString());
  }

  private Map<String, String> contents() throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.toList()) {
        String bytes =
            Files.isDirectory(file)
                ? "folder"
                : new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        contents.put(file.toString(), bytes);
      }
    }
    return contents;
  }
}
