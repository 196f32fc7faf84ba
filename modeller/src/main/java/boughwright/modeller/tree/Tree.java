// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A tree as measured.
 *
 * @param name what the person calls it
 * @param wood what it is made of
 * @param measuredOn day of the measurement
 * @param bark thickness of one layer of bark; empty when nobody gave it, which counts as 0, for the
 *     species table holds no bark [m]
 * @param unions where branches start to bend
 * @param segments all segments in file order; one of them, and only one, has no parent
 * @param overrides what is known better about some segments, in file order
 * @param wounds wounds in file order
 * @param caliperError nine readings in ten lie within this of the truth; empty for the default [m]
 * @param condition what the tree has been through
 * @param pullTests pull tests in file order
 * @param setting where it stands and grows
 * @param foliage what it wears in leaf
 */
public record Tree(
    String name,
    TreeWood wood,
    Optional<LocalDate> measuredOn,
    OptionalDouble bark,
    Unions unions,
    List<Segment> segments,
    List<WoodOverride> overrides,
    List<Wound> wounds,
    OptionalDouble caliperError,
    Condition condition,
    List<PullTest> pullTests,
    Setting setting,
    Foliage foliage) {
  /** Caliper error where nobody gave it [m]. Common practice, no source. */
  public static final double USUAL_CALIPER_ERROR = 0.3e-3;

  /**
   * @throws IllegalArgumentException with the first finding, if the segments are no tree ({@link
   *     TreeRules}) or a pull test or a pad does not fit it ({@link PullTestRules}, {@link
   *     PadRules})
   */
  public Tree {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(wood, "wood");
    Objects.requireNonNull(measuredOn, "measuredOn");
    Objects.requireNonNull(bark, "bark");
    Objects.requireNonNull(unions, "unions");
    segments = List.copyOf(segments);
    overrides = List.copyOf(overrides);
    wounds = List.copyOf(wounds);
    if (caliperError.isPresent() && !(caliperError.getAsDouble() > 0)) {
      throw new IllegalArgumentException("a caliper is never read without any error");
    }
    Objects.requireNonNull(condition, "condition");
    pullTests = List.copyOf(pullTests);
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(foliage, "foliage");
    TreeRules.requireTree(segments, wounds, bark);
    PullTestRules.requireFitting(segments, pullTests);
    PadRules.requireFitting(segments, foliage.pads());
  }

  /** The same tree with other values known better than the species table. */
  public Tree withOverrides(List<WoodOverride> others) {
    return new TreeDraft(this).overrides(others).build();
  }

  /** The same tree with other pull tests. */
  public Tree withPullTests(List<PullTest> others) {
    return new TreeDraft(this).pullTests(others).build();
  }

  /** The same tree, standing and growing otherwise. */
  public Tree withSetting(Setting other) {
    return new TreeDraft(this).setting(other).build();
  }

  /** The same tree in other foliage. */
  public Tree withFoliage(Foliage other) {
    return new TreeDraft(this).foliage(other).build();
  }

  /** What is known better than the species table about a segment: the closest pattern wins. */
  public Optional<WoodOverride> overrideFor(String segmentId) {
    return overrides.stream()
        .filter(override -> override.matches(segmentId))
        .max(Comparator.comparingInt(WoodOverride::closeness));
  }
}
