// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.tree.Condition;
import boughwright.modeller.tree.Foliage;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Setting;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import boughwright.modeller.tree.WoodOverride;
import boughwright.modeller.tree.Wound;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A tree while it is changed. Mutable, used by one edit. */
final class TreeDraft {
  String name;
  TreeWood wood;
  Optional<LocalDate> measuredOn;
  OptionalDouble bark;
  Unions unions;
  List<Segment> segments;
  List<WoodOverride> overrides;
  List<Wound> wounds;
  OptionalDouble caliperError;
  Condition condition;
  List<PullTest> pullTests;
  Setting setting;
  Foliage foliage;

  TreeDraft(Tree from) {
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

  Tree build() {
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
