// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A tree while it is put together or changed; each method sets the component of {@link Tree} of its
 * name. Mutable, used within one method.
 */
public final class TreeDraft {
  private String name;
  private TreeWood wood;
  private Optional<LocalDate> measuredOn = Optional.empty();
  private OptionalDouble bark = OptionalDouble.empty();
  private Unions unions = Unions.SURFACE;
  private List<Segment> segments;
  private List<WoodOverride> overrides = List.of();
  private List<Wound> wounds = List.of();
  private OptionalDouble caliperError = OptionalDouble.empty();
  private Condition condition = Condition.UNKNOWN;
  private List<PullTest> pullTests = List.of();
  private Setting setting = Setting.UNSAID;
  private Foliage foliage = Foliage.UNSAID;

  /** A tree of which nothing more is said; its branches bend from the surface. */
  public TreeDraft(String name, TreeWood wood, List<Segment> segments) {
    this.name = name;
    this.wood = wood;
    this.segments = segments;
  }

  /** A tree as it is, to be changed. */
  public TreeDraft(Tree from) {
    name = from.name();
    wood = from.wood();
    measuredOn = from.measuredOn();
    bark = from.bark();
    unions = from.unions();
    segments = from.segments();
    overrides = from.overrides();
    wounds = from.wounds();
    caliperError = from.caliperError();
    condition = from.condition();
    pullTests = from.pullTests();
    setting = from.setting();
    foliage = from.foliage();
  }

  public TreeDraft name(String other) {
    name = other;
    return this;
  }

  public TreeDraft wood(TreeWood other) {
    wood = other;
    return this;
  }

  public TreeDraft measuredOn(Optional<LocalDate> other) {
    measuredOn = other;
    return this;
  }

  public TreeDraft bark(OptionalDouble other) {
    bark = other;
    return this;
  }

  public TreeDraft unions(Unions other) {
    unions = other;
    return this;
  }

  public TreeDraft segments(List<Segment> other) {
    segments = other;
    return this;
  }

  public TreeDraft overrides(List<WoodOverride> other) {
    overrides = other;
    return this;
  }

  public TreeDraft wounds(List<Wound> other) {
    wounds = other;
    return this;
  }

  public TreeDraft caliperError(OptionalDouble other) {
    caliperError = other;
    return this;
  }

  public TreeDraft condition(Condition other) {
    condition = other;
    return this;
  }

  public TreeDraft pullTests(List<PullTest> other) {
    pullTests = other;
    return this;
  }

  public TreeDraft setting(Setting other) {
    setting = other;
    return this;
  }

  public TreeDraft foliage(Foliage other) {
    foliage = other;
    return this;
  }

  /** What is amiss with it; {@link #build} refuses it where any of that is a fault. */
  public List<Finding> findings() {
    return TreeRules.findings(segments, wounds, bark);
  }

  /**
   * The tree.
   *
   * @throws IllegalArgumentException if it is none
   */
  public Tree build() {
    return new Tree(
        name,
        wood,
        measuredOn,
        bark,
        unions,
        segments,
        overrides,
        wounds,
        caliperError,
        condition,
        pullTests,
        setting,
        foliage);
  }
}
