// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.shape.Mass;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Everything about the root base of one tree, for any front and planting angle. What does not
 * depend on the pose is worked out once; immutable.
 */
public final class Ground {
  private final double trunk;
  private final Point3 foot;
  private final List<Root> roots;
  private final Optional<Mass> rootWood;
  private final double depthNow;
  private final RootBaseMaker base;
  private final BalanceMaker balance;
  private final List<Point3> ends;
  private final Optional<Container> container;
  private final RootCare care;

  /**
   * For what the cuts leave of a tree.
   *
   * @param wood the wood
   * @param container what it stands in, or is to stand in [tree frame]
   * @param care what its roots can bear
   */
  public Ground(WoodLeft wood, Optional<Container> container, RootCare care) {
    Skeleton skeleton = wood.skeleton();
    int trunkBase = skeleton.outward(0);
    trunk = skeleton.caliper(trunkBase, 0);
    foot = skeleton.start(trunkBase);
    roots = Roots.of(wood);
    RootsLeft uncut = new RootsLeft(roots, new Stand(Rotation.NONE, foot), Optional.empty());
    rootWood = roots.isEmpty() ? Optional.empty() : Optional.of(Mass.of(uncut.wood()));
    depthNow = uncut.depth();
    base = new RootBaseMaker(trunk, foot, roots);
    List<Frustum> above =
        wood.pieces().stream()
            .filter(piece -> skeleton.segment(piece.segment()).kind() != Kind.ROOT)
            .toList();
    ends = above.stream().map(Frustum::end).toList();
    double measured = BalanceMaker.mass(Mass.of(new WoodLeft(skeleton).pieces()));
    balance = new BalanceMaker(Mass.of(above), measured, container);
    this.container = container;
    this.care = care;
  }

  /** The roots that leave the trunk, in file order. */
  public List<Root> roots() {
    return roots;
  }

  /** The plane that best fits the roots where they leave the trunk, if it can be told. */
  public Optional<RootPlane> plane() {
    return base.plane();
  }

  /** Diameter of the trunk base over bark [m]. */
  public double trunk() {
    return trunk;
  }

  /** What its roots can bear. */
  public RootCare care() {
    return care;
  }

  /** The account for one pose. */
  public GroundAnswer at(FrontPose pose) {
    Stand stand = new Stand(pose.toViewer(), foot);
    Optional<Box> box = container.map(one -> new Box(one, pose.azimuth()));
    boolean held = box.map(one -> one.margin(Point3.ORIGIN) >= trunk / 2).orElse(true);
    Optional<Box> inside = box.filter(any -> held);
    Set<Unsaid> unsaid = unsaid(held);
    double height = height(stand);
    RootsLeft left = new RootsLeft(roots, stand, inside);
    Balance balanced = balance.at(stand, left.wood(), inside, unsaid);
    TieDown.Push push = TieDown.Push.usual(height);
    Optional<TieDown> ties = TieDown.of(balanced.tree(), left.bearing(), push);
    if (ties.isEmpty()) {
      unsaid.add(Unsaid.NOTHING_BEARS);
    }
    return new GroundAnswer(
        pose,
        trunk,
        base.at(pose),
        rootWood.map(all -> mass(pose, stand, inside, left)),
        container.map(one -> new ContainerFit(one, trunk, height, held)),
        balanced,
        ties,
        unsaid);
  }

  private double height(Stand stand) {
    return ends.stream().mapToDouble(stand::height).reduce(0, Math::max);
  }

  private RootMass mass(FrontPose pose, Stand stand, Optional<Box> inside, RootsLeft left) {
    RootLosses losses = new RootLosses(roots, foot, inside);
    RootLoss loss = left.loss(losses.whole());
    double uncut = new RootsLeft(roots, stand, Optional.empty()).depth();
    return new RootMass(
        new RootMass.Depth(depthNow, uncut, Math.min(uncut, left.depth())),
        stand.at(rootWood.orElseThrow().centre()),
        loss,
        new TiltStepper(losses, care, pose).steps(loss));
  }

  private Set<Unsaid> unsaid(boolean held) {
    Set<Unsaid> out = EnumSet.noneOf(Unsaid.class);
    if (roots.isEmpty()) {
      out.add(Unsaid.NO_ROOTS);
    } else if (base.count() == 0) {
      out.add(Unsaid.ONLY_TAP_ROOTS);
    } else if (base.plane().isEmpty()) {
      out.add(base.count() < RootPlane.FEWEST ? Unsaid.TOO_FEW_ROOTS : Unsaid.ROOTS_ON_A_LINE);
    }
    if (container.isEmpty()) {
      out.add(Unsaid.NO_CONTAINER);
    } else if (!held) {
      out.add(Unsaid.CONTAINER_UNDER_TRUNK);
    }
    return out;
  }
}
