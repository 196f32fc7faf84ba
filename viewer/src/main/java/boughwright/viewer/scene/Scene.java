// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Optional;

/**
 * Everything there is to draw of a tree, from whatever side: immutable.
 *
 * @param bodies meshes by the way they are drawn
 * @param marks what is pointed out, with words
 * @param bounds box round all of it [m, scene frame]
 * @param base the middle of the root base [m, scene frame]
 * @param front the azimuth of the front [rad]
 * @param scale the colours of strain; empty when there is no bent pose
 * @param trouble why there is no bent pose although a trial was made; empty otherwise
 * @param risk what the bend risks; empty when that is not known
 * @param stages the poses of its course; empty without one
 */
public record Scene(
    List<Body> bodies,
    List<Mark> marks,
    Box bounds,
    Point3 base,
    double front,
    Optional<StrainScale> scale,
    Optional<String> trouble,
    Optional<RiskView> risk,
    Optional<StagesView> stages) {
  public Scene {
    bodies = List.copyOf(bodies);
    marks = List.copyOf(marks);
  }

  /**
   * The scene of a tree.
   *
   * @param document the tree
   * @param plan front, planting angle, cuts and proposals; without one the tree stands as measured
   * @param trial what the wood does; its pose is shown only when it holds
   */
  public static Scene of(Document document, Optional<Plan> plan, Optional<TrialResult> trial) {
    return of(document, plan, trial, Optional.empty());
  }

  /**
   * The scene of a tree that is bent in a course: the pose held in the end, those on the way, and
   * what stays.
   *
   * @param document the tree
   * @param plan front, planting angle, cuts and proposals; without one the tree stands as measured
   * @param trial what the wood does; where it does not hold, the course is not shown either
   * @param course the bend in the course of time
   */
  public static Scene of(
      Document document,
      Optional<Plan> plan,
      Optional<TrialResult> trial,
      Optional<Course> course) {
    return new SceneMaker(document.tree(), plan, trial, course).make();
  }

  /** The same scene with other marks. */
  public Scene withMarks(List<Mark> others) {
    return new Scene(bodies, others, bounds, base, front, scale, trouble, risk, stages);
  }

  /** The same in leaf. */
  public static Scene inLeaf(
      Document document,
      Optional<Plan> plan,
      Optional<TrialResult> trial,
      Optional<Course> course) {
    return new SceneMaker(document.tree(), plan, trial, course).inLeaf(true).make();
  }

  /** The same bare, with strain in the colours of others it stands beside. */
  public static Scene beside(
      StrainScale others, Document document, Optional<Plan> plan, Optional<TrialResult> trial) {
    return new SceneMaker(document.tree(), plan, trial, Optional.empty()).colouredBy(others).make();
  }

  /** The same scene; of its marks only the notes. */
  public Scene withNotesOnly() {
    List<Mark> notes = marks.stream().filter(Mark.Note.class::isInstance).toList();
    return new Scene(bodies, notes, bounds, base, front, scale, trouble, risk, stages);
  }

  /** Whether anything is drawn in some way. */
  public boolean has(Body.Role role) {
    return bodies.stream().anyMatch(b -> b.role() == role && !b.meshes().isEmpty());
  }
}
