// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Strand;
import boughwright.modeller.plan.Tackle;
import boughwright.modeller.plan.Tightener;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Setting;
import boughwright.modeller.tree.Tree;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Wire, lines and courses set down by hand, for tests of drawing. Nothing is computed: curves fall
 * off in a way that looks like relaxing wood.
 */
public final class InventedCourses {
  public static final double DAY = 86400;
  private static final double YEAR = 365.25 * DAY;

  private InventedCourses() {}

  public static Coil coil(Spot from, Spot to, Material metal, double gaugeMm) {
    return coil(from, to, metal, gaugeMm, 1, Hand.RIGHT);
  }

  public static Coil coil(
      Spot from, Spot to, Material metal, double gaugeMm, int strands, Hand hand) {
    return new Coil(from, to, metal, gaugeMm / 1000, strands, Math.toRadians(50), hand, Map.of());
  }

  /** The hedge tree in a box of 380 by 280 by 100 mm. */
  public static Tree boxed(String name) {
    Tree tree = InventedTrees.hedge(name);
    Container box =
        new Container(
            new Container.Size(0.38, 0.28, 0.10),
            0.01,
            0,
            Math.toRadians(-4),
            0.004,
            OptionalDouble.of(18),
            true,
            Map.of());
    return tree.withSetting(new Setting(Optional.of(box), Growing.UNSAID, List.of()));
  }

  private static GuyLine rigged(GuyLine line, OptionalDouble padRoundDeg, Tackle tackle) {
    return new GuyLine(
        line.id(),
        line.at(),
        padRoundDeg.isPresent()
            ? OptionalDouble.of(Math.toRadians(padRoundDeg.getAsDouble()))
            : padRoundDeg,
        line.anchor(),
        line.hold(),
        tackle,
        line.extras());
  }

  private static Tackle tackle(
      Optional<Strand> strand, Optional<Tightener> tightener, double padMm, AnchorKind kind) {
    return new Tackle(strand, tightener, OptionalDouble.of(padMm / 1000), 0, Optional.of(kind));
  }

  private static Optional<Strand> strand(Material material, double gaugeMm, int count) {
    return Optional.of(new Strand(material, gaugeMm / 1000, count, Map.of()));
  }

  /** Two staged lines: a twisted one with a stick in the middle, one with a turnbuckle. */
  private static List<GuyLine> twoLines() {
    return List.of(
        rigged(
            InventedTrees.guy("g1", new Spot("l3", 0.75), new double[] {-165, 10, 6}, 62),
            OptionalDouble.of(80),
            tackle(
                strand(Material.STAINLESS, 0.8, 2),
                Optional.of(new Tightener.Twist(true, 7, Map.of())),
                40,
                AnchorKind.SCREW)),
        rigged(
            InventedTrees.guy("g2", new Spot("b1b", 0.9), new double[] {-150, 4, 4}, 18),
            OptionalDouble.of(0),
            tackle(
                strand(Material.CORD, 1.5, 1),
                Optional.of(new Tightener.Turnbuckle(0.0025, 2, Map.of())),
                30,
                AnchorKind.PEG)));
  }

  /** The lines of {@link #twoLines} and four more. */
  private static List<GuyLine> sixLines() {
    List<GuyLine> lines = new ArrayList<>(twoLines());
    lines.add(
        rigged(
            InventedTrees.guy("g3", new Spot("b3b", 0.7), new double[] {150, 60, 8}, 12),
            OptionalDouble.empty(),
            tackle(
                strand(Material.STEEL_SOFT, 1.0, 2),
                Optional.of(new Tightener.Twist(false, 5, Map.of())),
                25,
                AnchorKind.RIM)));
    lines.add(
        rigged(
            InventedTrees.guy("g4", new Spot("b2b", 0.5), new double[] {40, 150, 4}, 9),
            OptionalDouble.of(0),
            tackle(Optional.empty(), Optional.empty(), 25, AnchorKind.FRAME)));
    GuyLine levered =
        InventedTrees.guy(
            "g5-the-line-with-the-lever", new Spot("l4", 0.5), new double[] {120, -120, 4}, 7);
    lines.add(
        rigged(
            levered,
            OptionalDouble.empty(),
            new Tackle(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                0.06,
                Optional.empty())));
    lines.add(InventedTrees.guy("g6", new Spot("b4b", 0.4), new double[] {-60, -160, 4}, 4));
    return lines;
  }

  private static List<Coil> fourCoils() {
    return List.of(
        coil(new Spot("l1", 0.1), new Spot("l4", 0.9), Material.COPPER_ANNEALED, 4, 2, Hand.RIGHT),
        coil(new Spot("b1", 0.1), new Spot("b1c", 0.9), Material.ALUMINIUM, 4, 1, Hand.RIGHT),
        coil(new Spot("b2", 0.2), new Spot("b2c", 0.9), Material.STEEL_SOFT, 2.5, 1, Hand.LEFT),
        coil(new Spot("b3", 0.1), new Spot("b3c", 0.8), Material.STAINLESS, 2, 1, Hand.LEFT));
  }

  private static Plan plan(Proposal proposal) {
    return InventedTrees.plan(
        List.of(proposal), List.of(new Spot("t4", 0.35)), Optional.of("l1"), Optional.empty());
  }

  /** Two lines, nothing else. */
  public static Plan lined() {
    return plan(new Proposal("p1", Optional.of("l1"), twoLines(), List.of(), List.of(), Map.of()));
  }

  /** Coils and a hand, no line. */
  public static Plan coiled() {
    return plan(
        new Proposal(
            "p1",
            Optional.of("l1"),
            List.of(),
            List.of(),
            fourCoils().subList(0, 2),
            List.of(hand("h1", "l4", Direction3.of(-1, 0.1, -0.1), 0.08)),
            List.of(),
            Map.of()));
  }

  /** Six lines, four coils and two hands at once. */
  public static Plan crowded() {
    return plan(
        new Proposal(
            "p1-everything-that-there-is-at-once",
            Optional.of("l1"),
            sixLines(),
            List.of(),
            fourCoils(),
            List.of(
                hand("h1", "l4", Direction3.of(-1, 0.1, -0.1), 0.08),
                hand("h2", "b1c", Direction3.of(0, 0, -1), 0.05)),
            List.of(),
            Map.of()));
  }

  private static HandBend hand(String id, String segment, Direction3 way, double move) {
    return new HandBend(id, new Spot(segment, 0.9), way, move, Map.of());
  }

  public static Document document(Plan plan) {
    return new Document(boxed("Hedge hornbeam"), List.of(plan), Map.of());
  }

  /** The bend of {@link Bending#drawnIn} as far as a part of it. */
  public static TrialResult bent(Tree tree, Plan plan, double part) {
    return new Bending(tree)
        .bend("l1", new Vector3(0, -3.45 * part, 0))
        .bend("l2", new Vector3(0, -3.1 * part, 0))
        .bend("l3", new Vector3(0, -2.25 * part, 0))
        .bend("l4", new Vector3(0, -0.6 * part, 0))
        .bend("b1", new Vector3(0, -2.2 * part, 0))
        .bend("b1b", new Vector3(0, -2.0 * part, 0))
        .result(plan);
  }

  /** Lines drawn in at the given days, each time further, released after a year. */
  public static Course staged(Document document, int... days) {
    Plan plan = document.plans().get(0);
    List<Course.Step> steps = new ArrayList<>();
    for (int n = 0; n < days.length; n++) {
      double part = (n + 1.0) / days.length;
      Course.Act act = n == 0 ? Course.Act.BEND : Course.Act.TIGHTEN;
      steps.add(step(document, act, days[n] * DAY, new double[] {part, part}));
    }
    steps.add(step(document, Course.Act.LOOK, 120 * DAY, new double[] {1, 1}));
    steps.add(step(document, Course.Act.RELEASE, YEAR, new double[] {1, 0.8}));
    return course(plan, document.tree(), steps, days);
  }

  /** Bent by hand further than it stays, let go, and released after a year. */
  public static Course byHand(Document document) {
    List<Course.Step> steps =
        List.of(
            step(document, Course.Act.BEND, 0, new double[] {1, 1.15}),
            step(document, Course.Act.LET_GO, 0, new double[] {1, 0.9}),
            step(document, Course.Act.LOOK, 60 * DAY, new double[] {1, 0.9}),
            step(document, Course.Act.LOOK, 120 * DAY, new double[] {1, 0.9}),
            step(document, Course.Act.RELEASE, YEAR, new double[] {1, 0.7}));
    return course(document.plans().get(0), document.tree(), steps, 0);
  }

  /** A step: part of the plan, and how far it is bent then. */
  private static Course.Step step(Document document, Course.Act act, double time, double[] parts) {
    TrialResult pose = bent(document.tree(), document.plans().get(0), parts[1]);
    return new Course.Step(
        act, time, parts[0], pose, 0.05 * parts[1], Map.of(), Map.of(), Optional.empty(), "do it");
  }

  /** A time span that is known in full [s]. */
  public static Course.Span span(double earliest, double likely, double latest) {
    return new Course.Span(
        OptionalDouble.of(earliest), OptionalDouble.of(likely), OptionalDouble.of(latest));
  }

  /** A course with samples alone, that never stays. */
  public static Course samplesOnly(List<Course.Sample> samples) {
    return new Course(
        List.of(), samples, Course.Span.NEVER, Course.Span.NEVER, 0.85, 1, List.of("invented"));
  }

  private static Course course(Plan plan, Tree tree, List<Course.Step> steps, int... days) {
    List<LineTrial> lines = bent(tree, plan, 1).lines();
    List<Course.Sample> samples = new ArrayList<>();
    for (int n = 0; n <= 160; n++) {
      double time = YEAR * 1.5 * Math.pow(n / 160.0, 3);
      double since = time;
      int stage = 0;
      for (int s = 0; s < days.length; s++) {
        if (time >= days[s] * DAY) {
          since = time - days[s] * DAY;
          stage = s;
        }
      }
      double left = 1 / (1 + 0.22 * Math.log1p(since / 3600));
      Map<String, Range> tensions = new LinkedHashMap<>();
      for (int k = 0; k < lines.size(); k++) {
        double slackens = k == 1 ? Math.max(0, 1 - time / (0.6 * YEAR)) : 1;
        double middle = lines.get(k).tension() * left * (stage + 1) / days.length * slackens;
        tensions.put(lines.get(k).id(), new Range(0.7 * middle, middle, 1.35 * middle));
      }
      double lost = 0.9 * left * (1 - 0.75 * Math.min(1, Math.pow(time / YEAR, 1.5)));
      samples.add(
          new Course.Sample(
              time, since, tensions, new Range(0.6 * lost, lost, Math.min(1, 1.4 * lost))));
    }
    return new Course(
        steps,
        samples,
        span(0.5 * YEAR, 0.8 * YEAR, 1.3 * YEAR),
        span(0.45 * YEAR, 0.7 * YEAR, 1.1 * YEAR),
        0.85,
        1,
        List.of("invented"));
  }
}
