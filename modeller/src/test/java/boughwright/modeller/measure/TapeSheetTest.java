// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Grain;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Knots;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapeSheetTest {
  /** Half a micrometre of rounding of the points, and as much of the parent's [m]. */
  private static final double ROUNDED = 1e-6;

  private static void assertPoint(Point3 point, double xMm, double yMm, double zMm) {
    assertThat(1000 * point.x()).as("x").isCloseTo(xMm, within(1000 * ROUNDED));
    assertThat(1000 * point.y()).as("y").isCloseTo(yMm, within(1000 * ROUNDED));
    assertThat(1000 * point.z()).as("z").isCloseTo(zMm, within(1000 * ROUNDED));
  }

  /**
   * The directions of design: azimuth 0 toward the viewer, 90 to the viewer's left, clockwise from
   * above. Numbers worked by hand from sin 30 = 1/2, cos 30 = 0.8660254, sin 45 = 0.7071068.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 100, 0, -100, 0",
    "90, 0, 100, -100, 0, 0",
    "180, 0, 100, 0, 100, 0",
    "270, 0, 100, 100, 0, 0",
    "-90, 0, 100, 100, 0, 0",
    "90, 30, 100, -86.60254, 0, 50",
    "30, 45, 100, -35.35534, -61.23724, 70.71068",
    "240, -30, 80, 60, 34.64102, -40",
    "315, 60, 50, 17.67767, -17.67767, 43.30127"
  })
  void pieceEnds_whereTrigonometrySaysItDoes(
      double azimuth, double elevation, double length, double x, double y, double z)
      throws InputException {
    Tree tree =
        Sheets.tree(
            Sheets.of(
                Sheets.TRUNK, "b1,t1,branch," + azimuth + ',' + elevation + ',' + length + ",9,7"));
    assertPoint(tree.segments().get(1).end(), x, y, 90 + z);
  }

  /** The example in the description of the class. */
  @Test
  void pieceStarts_partWayUpItsParent() throws InputException {
    String sheet =
        Sheets.TITLE
            + Sheets.HEADINGS
            + ",along\nt1,,trunk,,90,70,58,50,\nb1,t1,branch,90,30,100,17,14,0.5\n";
    Skeleton skeleton = new Skeleton(Sheets.tree(sheet));
    assertPoint(skeleton.start(1), 0, 0, 35);
    assertPoint(skeleton.end(1), -86.60254, 0, 85);
    assertThat(skeleton.joint(1)).isEqualTo(Joint.UNION);
  }

  /**
   * A chain: 100 mm at 60 degrees above level toward the right (50, 0, 86.60254), then 30 mm along
   * it a branch of 40 mm straight down from (15, 0, 25.98076).
   */
  @Test
  void distanceFromTheParentsStart_givesTheSamePlaceAsAFraction() throws InputException {
    String headings = Sheets.TITLE + Sheets.HEADINGS;
    String trunk = "t1,,trunk,270,60,100,24,20";
    String byDistance =
        headings + ",from_parent_start_cm\n" + trunk + ",\nb1,t1,branch,,-90,40,9,7,3\n";
    String byFraction = headings + ",along\n" + trunk + ",\nb1,t1,branch,,-90,40,9,7,0.3\n";
    Tree tree = Sheets.tree(byDistance);
    assertPoint(tree.segments().get(0).end(), 50, 0, 86.60254);
    assertPoint(tree.segments().get(1).end(), 15, 0, -14.01924);
    assertThat(tree).isEqualTo(Sheets.tree(byFraction));
  }

  @Test
  void everyColumn_reachesTheTree() throws InputException {
    String sheet =
        """
        # name: Hornbeam "north" bed
        # species: carpinus-betulus
        # measured: 2026-03-02
        # unions: axis
        # bark: 0.8 mm
        # three years in the field
        segment,parent,kind,azimuth_deg,elevation_deg,length_mm,caliper_start_mm,caliper_end_mm,joins,bark_mm,live,note
        t1,,trunk,0,90,70,58,50,,1.1,yes,
        d1,t1,deadwood,90,30,100,17,14,union,0,no,"dry, hollow"
        r1,t1,Root,90,-20,60,20,9,,,,
        s1,t1,sacrifice,90,40,60,20,9,continues,,,
        """;
    Tree tree = Sheets.tree(sheet);
    assertThat(tree.name()).isEqualTo("Hornbeam \"north\" bed");
    assertThat(tree.wood()).isEqualTo(new TreeWood.OfSpecies("carpinus-betulus"));
    assertThat(tree.measuredOn()).contains(LocalDate.of(2026, 3, 2));
    assertThat(tree.unions()).isEqualTo(Unions.AXIS);
    assertThat(tree.bark()).hasValue(0.0008);
    Segment trunk = tree.segments().get(0);
    assertThat(trunk.bark()).hasValue(0.0011);
    assertThat(trunk.live()).contains(true);
    assertThat(trunk.caliperStart()).isEqualTo(0.058);
    assertThat(trunk.caliperEnd()).isEqualTo(0.05);
    Segment dead = tree.segments().get(1);
    assertThat(dead.kind()).isEqualTo(Kind.DEADWOOD);
    assertThat(dead.joins()).contains(Joint.UNION);
    assertThat(dead.live()).contains(false);
    assertThat(dead.extras()).containsExactlyEntriesOf(Map.of("note", "dry, hollow"));
    assertThat(tree.segments().get(2).kind()).isEqualTo(Kind.ROOT);
    assertThat(tree.segments().get(2).bark()).isEmpty();
    assertThat(tree.segments().get(3).joins()).contains(Joint.CONTINUES);
  }

  /** The same tree written in several ways: inch 25.4 mm exactly. */
  @Test
  void unitsOfTheHeadings_areEachRead() throws InputException {
    String rows = "segment,parent,kind,azimuth_deg,elevation_deg,length_%s,caliper_start_%s,";
    String mm = "caliper_end_%s\nt1,,trunk,45,60,%s,%s,%s\n";
    Tree inMm =
        Sheets.tree(Sheets.TITLE + (rows + mm).formatted("mm", "mm", "mm", "127", "25.4", "12.7"));
    Tree mixed =
        Sheets.tree(Sheets.TITLE + (rows + mm).formatted("cm", "in", "inch", "12.7", "1", "0.5"));
    Tree fractions =
        Sheets.tree(Sheets.TITLE + (rows + mm).formatted("in", "in", "mm", "5", "1", "1/2 in"));
    assertThat(mixed).isEqualTo(inMm);
    assertThat(fractions).isEqualTo(inMm);
    assertThat(inMm.segments().get(0).caliperEnd()).isEqualTo(0.0127);
  }

  @Test
  void rowsInAnySequence_giveTheSameShape() throws InputException {
    String[] rows = {
      Sheets.TRUNK,
      "t2,t1,trunk,10,80,60,20,16",
      "b1,t2,branch,100,20,50,8,6",
      "b2,b1,branch,90,5,30,6,4"
    };
    String[] turned = {rows[3], rows[1], rows[2], rows[0]};
    Skeleton straight = new Skeleton(Sheets.tree(Sheets.of(rows)));
    Skeleton backward = new Skeleton(Sheets.tree(Sheets.of(turned)));
    for (String id : List.of("t1", "t2", "b1", "b2")) {
      assertThat(backward.end(backward.indexOf(id))).isEqualTo(straight.end(straight.indexOf(id)));
    }
    assertThat(backward.segment(0).id()).isEqualTo("b2");
  }

  @Test
  void id_staysText_whenItLooksLikeANumber() throws InputException {
    Tree tree = Sheets.tree(Sheets.of("01,,trunk,,90,90,24,20", "1E5,01,branch,90,0,50,9,7"));
    assertThat(tree.segments()).extracting(Segment::id).containsExactly("01", "1E5");
  }

  @Test
  void emptyCaliper_isTakenFromThePieceTheShootGoesOnFrom() throws InputException {
    MeasuredTree read =
        Sheets.read(
            Sheets.of(
                "t1,,trunk,,90,90,24,",
                "b1,t1,branch,90,10,50,9,7",
                "t2,t1,trunk,5,80,90,20,16",
                "t3,t2,trunk,5,80,60,,12"));
    List<Segment> segments = read.document().tree().segments();
    assertThat(segments.get(0).caliperEnd()).isEqualTo(0.02);
    assertThat(segments.get(3).caliperStart()).isEqualTo(0.016);
    assertThat(read.warnings()).extracting(Problem::kind).containsExactly("caliper-from-neighbour");
    assertThat(read.warnings().get(0).line()).contains("2 empty calipers").contains("t1, t3");
  }

  @Test
  void cleanSheet_givesNoWarnings() throws InputException {
    assertThat(Sheets.read(Sheets.of(Sheets.TRUNK)).warnings()).isEmpty();
  }

  @Test
  void template_isReadWithoutAWord() throws InputException {
    MeasuredTree read = TapeSheet.read(Path.of("..", "examples", "tape-sheet-template.csv"));
    assertThat(read.warnings()).isEmpty();
    assertThat(read.document().tree().segments()).hasSizeGreaterThan(5);
    assertThat(read.document().tree().segments()).extracting(Segment::kind).contains(Kind.ROOT);
  }

  @Test
  void ticks_areRead_andEmptyCellsSayNothing() throws InputException {
    String sheet =
        Sheets.TITLE
            + Sheets.HEADINGS
            + ",knots,grain,included_bark,hollow_mm\n"
            + Sheets.TRUNK
            + ",,,,\n"
            + "b1,t1,branch,90,20,50,12,8,many,sloping,yes,4\n";
    Tree tree = Sheets.tree(sheet);
    assertThat(tree.segments().get(0).features()).isEqualTo(Features.NONE);
    Features ticked = tree.segments().get(1).features();
    assertThat(ticked.knots()).contains(Knots.MANY);
    assertThat(ticked.grain()).contains(Grain.SLOPING);
    assertThat(ticked.includedBark()).isTrue();
    assertThat(ticked.hollow().orElseThrow()).isEqualTo(0.004);
  }

  /** 8 mm over bark, 1 mm of bark on each side of the whole tree: 6 mm of wood. */
  @Test
  void hollowWiderThanTheWood_isRefused_inItsRow() {
    String sheet =
        "# bark: 1 mm\n"
            + Sheets.TITLE
            + Sheets.HEADINGS
            + ",hollow_mm\n"
            + Sheets.TRUNK
            + ",\n"
            + "b1,t1,branch,90,20,50,12,8,6.5\n";
    assertThat(Sheets.faults(sheet))
        .filteredOn(Problem::isFault)
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.kind()).isEqualTo("weak-spot-too-large");
              assertThat(fault.place().line()).isEqualTo(6);
            });
  }

  @Test
  void rootWithoutAPlace_startsAtTheFootOfTheTrunk_andGoesOnFromARoot() throws InputException {
    Tree tree =
        Sheets.tree(
            Sheets.of(Sheets.TRUNK, "r1,t1,root,90,-20,50,12,8", "r2,r1,root,90,-30,40,8,5"));
    assertThat(tree.segments().get(1).along()).isZero();
    assertThat(tree.segments().get(2).along()).isEqualTo(1);
  }
}
