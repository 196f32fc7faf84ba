// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.Condition;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.NameRules;
import boughwright.modeller.tree.Setting;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeRules;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import boughwright.modeller.tree.WoodOverride;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Changes of what is said about the tree as a whole. */
public final class TreeEdits {
  private static final Named<AnchorPoint> ANCHORS = new Named<>("anchor", AnchorPoint::id);

  private TreeEdits() {}

  private interface Change {
    TreeDraft on(Tree tree) throws InputException;
  }

  private static Edit edit(String name, Change change) {
    return new Edit(
        name,
        document -> {
          TreeDraft tree = change.on(document.tree());
          Judging.require("", tree.findings());
          Document changed = document.withTree(tree.build());
          Skeleton skeleton = new Skeleton(changed.tree());
          for (var plan : changed.plans()) {
            Judging.require(skeleton, plan);
          }
          return changed;
        });
  }

  /** Names the tree. */
  public static Edit name(String name) {
    return edit("Name the tree", tree -> new TreeDraft(tree).name(checkedName("the name", name)));
  }

  static String checkedName(String what, String name) throws InputException {
    Optional<String> fault = NameRules.faultOfName(name);
    if (fault.isPresent()) {
      throw Refusal.of(what, "bad-name", "it " + fault.get(), "Give another name");
    }
    return name;
  }

  /** Says what wood it is. */
  public static Edit wood(TreeWood wood) {
    return edit(
        "Set the species",
        tree -> {
          checkedName(
              "the species",
              wood instanceof TreeWood.Own own ? own.name() : ((TreeWood.OfSpecies) wood).key());
          return new TreeDraft(tree).wood(wood);
        });
  }

  /** Says what is known better than the species table about some segments. */
  public static Edit overrides(List<WoodOverride> overrides) {
    return edit(
        "Set the wood",
        tree -> {
          List<String> ids = tree.segments().stream().map(segment -> segment.id()).toList();
          Judging.require("", TreeRules.woodFindings(ids, overrides));
          return new TreeDraft(tree).overrides(overrides);
        });
  }

  /** Says when it was measured. */
  public static Edit measuredOn(Optional<LocalDate> day) {
    return edit("Set the day of measuring", tree -> new TreeDraft(tree).measuredOn(day));
  }

  /** Sets the thickness of one layer of bark; empty for not said [m]. */
  public static Edit bark(OptionalDouble bark) {
    return edit(
        "Set the bark",
        tree -> {
          if (bark.isPresent()) {
            Refusal.sizeOrNone("the bark", "it", bark.getAsDouble());
          }
          return new TreeDraft(tree).bark(bark);
        });
  }

  /** Says where branches start to bend. */
  public static Edit unions(Unions unions) {
    return edit("Set where branches bend from", tree -> new TreeDraft(tree).unions(unions));
  }

  /** Sets how far nine readings in ten lie from the truth; empty for the usual [m]. */
  public static Edit caliperError(OptionalDouble error) {
    return edit(
        "Set the caliper error",
        tree -> {
          if (error.isPresent()) {
            Refusal.size("the caliper error", "it", error.getAsDouble());
          }
          return new TreeDraft(tree).caliperError(error);
        });
  }

  /** Says what the tree has been through. */
  public static Edit condition(Condition condition) {
    return edit("Set the condition", tree -> new TreeDraft(tree).condition(condition));
  }

  /** Says what the tree stands in. */
  public static Edit container(Optional<Container> container) {
    return setting(
        "Set the container", old -> new Setting(container, old.growing(), old.anchors()));
  }

  /** Says how fast it thickens. */
  public static Edit growing(Growing growing) {
    return setting("Set the growth", old -> new Setting(old.container(), growing, old.anchors()));
  }

  private interface SettingChange {
    Setting of(Setting setting) throws InputException;
  }

  private static Edit setting(String name, SettingChange change) {
    return edit(name, tree -> new TreeDraft(tree).setting(change.of(tree.setting())));
  }

  /** Adds a point that lines can be tied to. */
  public static Edit addAnchor(AnchorPoint anchor) {
    return anchors("Add anchor " + anchor.id(), all -> ANCHORS.add(all, anchor));
  }

  /** Puts another anchor in the place of one. */
  public static Edit changeAnchor(String id, AnchorPoint anchor) {
    return anchors("Change anchor " + id, all -> ANCHORS.replace(all, id, anchor));
  }

  /** Takes an anchor out; lines keep the point they are tied to. */
  public static Edit deleteAnchor(String id) {
    return anchors("Delete anchor " + id, all -> ANCHORS.remove(all, id));
  }

  private interface Anchors {
    void on(List<AnchorPoint> anchors) throws InputException;
  }

  private static Edit anchors(String name, Anchors change) {
    return setting(
        name,
        old -> {
          List<AnchorPoint> anchors = new ArrayList<>(old.anchors());
          change.on(anchors);
          return new Setting(old.container(), old.growing(), anchors);
        });
  }
}
