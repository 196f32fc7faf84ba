// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Makes scenes one after another for a tree that is turned and bent on a screen; what did not
 * change from one to the next is the same object in both. Used by one thread.
 */
public final class LiveScene {
  private final SkinStore coarseSkins = new SkinStore(false);
  private final SkinStore fineSkins = new SkinStore(true);
  private final CoilStore coils = new CoilStore();
  private LiveTree last;
  private final Map<Boolean, Made> made = new HashMap<>();

  /** A scene, and what of. */
  private record Made(Shown shown, Scene scene) {}

  /** The scene of what is to be shown. */
  public Scene make(Shown shown) {
    return makeUnless(() -> false, shown).orElseThrow();
  }

  /**
   * The scene of what is to be shown; empty where it is given up on the way, and what is made by
   * then is kept for the next time.
   *
   * @param stop asked again and again whether to give up
   */
  public Optional<Scene> makeUnless(BooleanSupplier stop, Shown shown) {
    Made before = made.get(shown.options().fine());
    if (before != null && before.shown() == shown) {
      return Optional.of(before.scene());
    }
    if (last != shown.tree()) {
      coarseSkins.clear();
      fineSkins.clear();
      coils.clear();
      made.clear();
      last = shown.tree();
    }
    Making making = new Making(shown);
    if (!making.addWood(stop)) {
      return Optional.empty();
    }
    Scene scene = making.scene();
    made.put(shown.options().fine(), new Made(shown, scene));
    return Optional.of(scene);
  }

  /** Puts one scene together. */
  private final class Making {
    private final Shown shown;
    private final LiveTree tree;
    private final Skin.Detail detail;
    private final SkinStore skins;
    private final List<Body> ghosts = new ArrayList<>();
    private final List<Body> bodies = new ArrayList<>();
    private final List<Mesh> solid = new ArrayList<>();
    private final List<Mesh> dimmed = new ArrayList<>();

    Making(Shown shown) {
      this.shown = shown;
      tree = shown.tree();
      int count = tree.skeleton.size();
      skins = shown.options().fine() ? fineSkins : coarseSkins;
      detail = shown.options().fine() ? Skin.Detail.still(count) : Skin.Detail.moving(count);
    }

    /** Adds the skins, which take longest; says whether it came to the end. */
    boolean addWood(BooleanSupplier stop) {
      for (Limb limb : tree.limbs) {
        if (stop.getAsBoolean()) {
          return false;
        }
        addLimb(limb);
      }
      return addGhosts(stop);
    }

    Scene scene() {
      addWounds();
      Box wood = SceneMaker.bounds(tree.base(), List.of(new Body(Body.Role.SOLID, solid)));
      Holdings holdings = new Holdings(tree.skeleton, tree.stand(), shown.pose(), wood.diagonal());
      holdings.tellOnlyOf(id -> shown.visibility().of(id) == Visibility.Way.SHOWN);
      holdings.takeCoilsFrom(coils, shown.options().fine());
      shown.plan().ifPresent(p -> holdings.addPlan(p, shown.trial(), tree.kept, tree.limbs));
      List<Mesh> fittings = new ArrayList<>(holdings.meshes());
      bodies.add(new Body(Body.Role.SOLID, solid));
      bodies.add(new Body(Body.Role.DIMMED, dimmed));
      addContainer(fittings, SceneMaker.EDGE_SHARE * wood.diagonal());
      bodies.add(new Body(Body.Role.FITTING, fittings));
      bodies.addAll(ghosts);
      addRemoved();
      addFoliage();
      List<Mark> marks = new ArrayList<>(holdings.marks());
      marks.addAll(shown.options().notes());
      return new Scene(
          bodies,
          marks,
          SceneMaker.bounds(tree.base(), bodies),
          tree.base(),
          shown.plan().map(p -> p.frontAzimuth().orElse(0)).orElse(0.0),
          shown.options().strain(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }

    /** Draws a limb, each run of its segments that are shown alike as a skin of its own. */
    private void addLimb(Limb limb) {
      Skin.Stretch stays = LimbSkins.staying(limb, tree.kept);
      for (Run run : runs(limb, stays)) {
        if (run.way() == Visibility.Way.SHOWN) {
          solid.add(skin(0, limb, run, shown.pose(), shown.options().strain()));
        } else if (run.way() == Visibility.Way.DIMMED) {
          dimmed.add(skin(0, limb, run, shown.pose(), Optional.empty()));
        }
      }
    }

    /** Segments of a limb one after another that are shown alike, and how the last one ends. */
    private record Run(Skin.Stretch stretch, Visibility.Way way, SkinMesher.End end) {}

    private List<Run> runs(Limb limb, Skin.Stretch stays) {
      List<Run> runs = new ArrayList<>();
      if (stays.isEmpty()) {
        return runs;
      }
      int from = 0;
      for (int k = 0; k <= stays.toSegment(); k++) {
        Visibility.Way way = way(limb, k);
        boolean isLast = k == stays.toSegment();
        if (isLast || way(limb, k + 1) != way) {
          Skin.Stretch stretch = new Skin.Stretch(from, 0, k, isLast ? stays.toAlong() : 1);
          runs.add(new Run(stretch, way, end(limb, stretch, isLast)));
          from = k + 1;
        }
      }
      return runs;
    }

    private SkinMesher.End end(Limb limb, Skin.Stretch stretch, boolean isLast) {
      if (!isLast) {
        return SkinMesher.End.FLAT;
      }
      boolean whole = stretch.toSegment() == limb.segments().size() - 1 && stretch.toAlong() == 1;
      return whole ? SkinMesher.End.ROUNDED : SkinMesher.End.CUT;
    }

    private Visibility.Way way(Limb limb, int k) {
      return shown.visibility().of(tree.skeleton.segment(limb.segments().get(k)).id());
    }

    private Mesh skin(int use, Limb limb, Run run, Pose pose, Optional<StrainScale> colours) {
      return skins.mesh(tree, key(use, limb, run), pose, colours);
    }

    private SkinStore.Key key(int use, Limb limb, Run run) {
      return new SkinStore.Key(use, limb, run.stretch(), run.end(), detail);
    }

    private boolean addGhosts(BooleanSupplier stop) {
      for (int n = 0; n < shown.ghosts().size(); n++) {
        Shown.Ghost ghost = shown.ghosts().get(n);
        List<Mesh> meshes = new ArrayList<>();
        for (Limb limb : tree.limbs) {
          if (stop.getAsBoolean()) {
            return false;
          }
          Skin.Stretch stays = LimbSkins.staying(limb, tree.kept);
          for (Run run : runs(limb, stays)) {
            boolean isSeen = run.way() != Visibility.Way.HIDDEN;
            if (isSeen && skins.isElsewhere(key(n + 1, limb, run), ghost.pose(), shown.pose())) {
              meshes.add(skin(n + 1, limb, run, ghost.pose(), Optional.empty()));
            }
          }
        }
        Body.Role role = ghost.tone().isPresent() ? Body.Role.STAGE : Body.Role.GHOST;
        ghosts.add(new Body(role, toned(meshes, ghost.tone())));
      }
      return true;
    }

    private List<Mesh> toned(List<Mesh> meshes, Optional<Colour> tone) {
      return tone.map(t -> meshes.stream().map(mesh -> skins.tinted(mesh, t)).toList())
          .orElse(meshes);
    }

    private void addRemoved() {
      List<Mesh> going = new ArrayList<>();
      for (Limb limb : tree.limbs) {
        Skin.Stretch goes = LimbSkins.going(limb, LimbSkins.staying(limb, tree.kept));
        if (!goes.isEmpty() && way(limb, goes.fromSegment()) != Visibility.Way.HIDDEN) {
          Run run = new Run(goes, Visibility.Way.SHOWN, SkinMesher.End.ROUNDED);
          going.add(skin(-1, limb, run, tree.measured(), Optional.empty()));
        }
      }
      bodies.add(new Body(Body.Role.REMOVED, going));
    }

    private void addWounds() {
      WoundPatch patch = new WoundPatch(tree.skeleton, shown.pose(), tree.stand());
      for (Wound wound : tree.skeleton.tree().wounds()) {
        boolean isSeen = shown.visibility().of(wound.segment()) == Visibility.Way.SHOWN;
        if (isSeen && tree.kept.holds(new Spot(wound.segment(), wound.along()))) {
          solid.add(patch.mesh(wound));
        }
      }
    }

    private void addFoliage() {
      if (shown.options().ways().contains(Shown.Way.IN_LEAF)) {
        bodies.add(
            tree.leafage()
                .body(shown.pose(), id -> shown.visibility().of(id) == Visibility.Way.SHOWN));
      }
    }

    private void addContainer(List<Mesh> fittings, double edge) {
      Optional<Container> container = tree.skeleton.tree().setting().container();
      boolean level = shown.options().ways().contains(Shown.Way.LEVEL_CONTAINER);
      Stand stand = level ? Stand.of(Optional.empty(), tree.base()) : tree.stand();
      if (container.isPresent()) {
        Pot pot = new Pot(container.get(), tree.skeleton.start(tree.skeleton.outward(0)), stand);
        fittings.addAll(pot.edges(edge));
        bodies.add(new Body(Body.Role.CONTAINER, List.of(pot.walls())));
      }
    }
  }
}
