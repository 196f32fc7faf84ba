// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What a moving picture shows of a tree.
 *
 * @param tree the tree as it is cut and planted
 * @param plan whose lines, coils and cuts are drawn; empty for none
 * @param trial the result whose pose is shown, for its tensions and its hardest place; empty where
 *     the shown pose is that of none
 * @param pose the pose drawn solid
 * @param ghosts other poses beside it
 * @param visibility what is left out or hinted at
 * @param options what else is drawn
 */
public record Shown(
    LiveTree tree,
    Optional<Plan> plan,
    Optional<TrialResult> trial,
    Pose pose,
    List<Ghost> ghosts,
    Visibility visibility,
    Options options) {
  public Shown {
    Objects.requireNonNull(tree, "tree");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(trial, "trial");
    Objects.requireNonNull(pose, "pose");
    ghosts = List.copyOf(ghosts);
    Objects.requireNonNull(visibility, "visibility");
    Objects.requireNonNull(options, "options");
  }

  /**
   * A pose beside the one that is shown.
   *
   * @param pose the pose
   * @param tone its tone where it is one of several on the way; empty for the pose as measured
   */
  public record Ghost(Pose pose, Optional<Colour> tone) {}

  /** A way to show a tree. */
  public enum Way {
    IN_LEAF,
    /** The container stays level while the tree is tilted in it; else it goes with the tree. */
    LEVEL_CONTAINER
  }

  /**
   * What else is drawn.
   *
   * @param strain the colours of strain; empty for plain bark
   * @param fine whether skins are as fine as for a tree that stands still
   * @param notes what is said beside segments
   * @param ways in what other ways it is shown
   */
  public record Options(
      Optional<StrainScale> strain, boolean fine, List<Mark.Note> notes, Set<Way> ways) {
    public Options {
      Objects.requireNonNull(strain, "strain");
      notes = List.copyOf(notes);
      ways = Set.copyOf(ways);
    }

    /** The tree bare, a container going with it. */
    public Options(Optional<StrainScale> strain, boolean fine, List<Mark.Note> notes) {
      this(strain, fine, notes, Set.of());
    }
  }

  /** The same, drawn fine or not. */
  public Shown with(boolean fine) {
    return new Shown(
        tree,
        plan,
        trial,
        pose,
        ghosts,
        visibility,
        new Options(options.strain(), fine, options.notes(), options.ways()));
  }
}
