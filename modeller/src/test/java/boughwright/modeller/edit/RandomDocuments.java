// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.FrontChoice;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.tree.DeadFace;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Foliage;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Leaves;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import boughwright.modeller.tree.WoodOverride;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Sound documents of every shape, the same for the same seed. */
public final class RandomDocuments {
  private final Random random;

  public RandomDocuments(Random random) {
    this.random = random;
  }

  /** A document with plans. */
  public Document next() {
    while (true) {
      try {
        return new RandomPlans(random)
            .with(new Document(tree(), List.of(), Map.of()))
            .withFronts(fronts());
      } catch (IllegalArgumentException e) {
        continue;
      }
    }
  }

  private FrontChoice fronts() {
    return random.nextInt(3) == 0
        ? FrontChoice.UNSAID
        : new FrontChoice(
            new FrontWishes(
                Optional.of(TreeStyle.BROOM),
                OptionalDouble.empty(),
                OptionalDouble.of(0.9),
                Map.of(FrontMeasure.TAPER, 1.5),
                Map.of("light", "north")),
            List.of(
                new MarkedFront(
                    "f1",
                    between(-3, 3),
                    Optional.of(new Planting(0.1, 2)),
                    Optional.of("calm"),
                    Map.of())));
  }

  private double between(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  private Direction3 direction() {
    return Direction3.ofAzimuth(between(0, 6.28), between(-1.4, 1.5));
  }

  private Tree tree() {
    List<Segment> segments = new ArrayList<>();
    List<Point3> starts = new ArrayList<>();
    int count = 3 + random.nextInt(22);
    for (int i = 0; i < count; i++) {
      segments.add(i == 0 ? base() : on(i, segments, starts));
      starts.add(i == 0 ? Point3.ORIGIN : starts.get(i));
    }
    List<Wound> wounds = new ArrayList<>();
    for (int k = random.nextInt(4); k > 0; k--) {
      wounds.add(
          new Wound(
              "w" + k,
              any(segments).id(),
              between(0, 1),
              between(0, 6),
              0.01,
              0.02,
              Optional.empty(),
              Map.of("note", "kept")));
    }
    return new TreeDraft("random", new TreeWood.OfSpecies("carpinus-betulus"), segments)
        .bark(OptionalDouble.of(0.0004))
        .unions(random.nextBoolean() ? Unions.SURFACE : Unions.AXIS)
        .overrides(overrides(segments))
        .wounds(wounds)
        .pullTests(tests(segments))
        .foliage(foliage(segments))
        .build();
  }

  private Foliage foliage(List<Segment> segments) {
    List<Pad> pads = new ArrayList<>();
    for (int k = random.nextInt(3); k > 0; k--) {
      pads.add(
          new Pad(
              "f" + k,
              any(segments).id(),
              between(0, 1),
              between(0.03, 0.1),
              0.04,
              0.02,
              random.nextBoolean() ? 0 : 0.005,
              Map.of("note", "kept")));
    }
    Optional<Leaves> leaves =
        random.nextBoolean() ? Optional.empty() : Optional.of(Leaves.EVERGREEN);
    return new Foliage(leaves, pads, Map.of());
  }

  private Segment base() {
    return new Segment(
        "t1",
        Optional.empty(),
        1,
        Optional.empty(),
        Kind.TRUNK,
        Optional.of(Point3.ORIGIN),
        new Point3(between(-0.02, 0.02), 0, between(0.05, 0.2)),
        0.05,
        0.04,
        OptionalDouble.empty(),
        Optional.empty(),
        Map.of());
  }

  private Segment on(int i, List<Segment> segments, List<Point3> starts) {
    Segment parent = any(segments);
    double along = random.nextInt(3) > 0 ? 1 : Math.round(between(0.2, 0.95) * 100) / 100.0;
    Point3 from = starts.get(segments.indexOf(parent)).toward(parent.end(), along);
    starts.add(from);
    Kind kind = random.nextInt(10) < 7 ? parent.kind() : Kind.values()[1 + random.nextInt(4)];
    double caliper = parent.caliperEnd() * between(0.5, 0.9);
    Optional<Joint> joins =
        random.nextInt(4) > 0
            ? Optional.empty()
            : Optional.of(along == 1 && random.nextBoolean() ? Joint.CONTINUES : Joint.UNION);
    String id = "tbrsd".charAt(kind.ordinal()) + String.valueOf(i + 1);
    return new Segment(
        id,
        Optional.of(parent.id()),
        along,
        joins,
        kind,
        Optional.empty(),
        from.plus(direction().times(between(0.06, 0.15))),
        caliper,
        caliper * 0.9,
        random.nextInt(5) == 0 ? OptionalDouble.of(0.0003) : OptionalDouble.empty(),
        random.nextInt(5) == 0 ? Optional.of(true) : Optional.empty(),
        random.nextInt(4) == 0 ? weak(caliper) : Features.NONE,
        random.nextInt(6) == 0 ? Map.of("mood", "good") : Map.of());
  }

  private Features weak(double caliper) {
    return new Features(
        random.nextBoolean() ? OptionalDouble.of(caliper * 0.2) : OptionalDouble.empty(),
        random.nextBoolean()
            ? Optional.of(new DeadFace(between(0, 6), 0.5, caliper * 0.1))
            : Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        random.nextBoolean());
  }

  private List<WoodOverride> overrides(List<Segment> segments) {
    List<WoodOverride> all = new ArrayList<>();
    if (random.nextBoolean()) {
      all.add(override("b*", 5e9));
    }
    if (random.nextBoolean()) {
      all.add(override("t1*", 8e9));
    }
    if (random.nextBoolean()) {
      all.add(override(any(segments).id(), 4e9));
    }
    return all;
  }

  private static WoodOverride override(String pattern, double moe) {
    return new WoodOverride(
        pattern,
        OptionalDouble.of(moe),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.of("a guess"),
        Map.of());
  }

  private List<PullTest> tests(List<Segment> segments) {
    if (random.nextBoolean()) {
      return List.of();
    }
    var reading = new PullTest.Reading(10, 0.01, 0, 0.02, 0.0005);
    return List.of(
        new PullTest(
            "pt1",
            any(segments).id(),
            between(0.1, 1),
            new Direction3(0, 0, -1),
            List.of(reading),
            Optional.empty(),
            Map.of()));
  }

  private <T> T any(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
