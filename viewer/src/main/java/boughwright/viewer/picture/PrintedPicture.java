// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.design.front.FrontMap;
import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.gl.NoGraphicsException;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.StrainScale;
import boughwright.viewer.scene.ViewAngle;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A picture that is drawn and waits to be written, for those who know nothing of graphics. */
public final class PrintedPicture {
  static {
    // Drawing needs no display; asking for one fails where DISPLAY names none that answers. In a
    // program that has already opened a window this changes nothing.
    if (System.getProperty("java.awt.headless") == null) {
      System.setProperty("java.awt.headless", "true");
    }
  }

  private final BufferedImage image;

  private PrintedPicture(BufferedImage image) {
    this.image = image;
  }

  /**
   * What one view shows.
   *
   * @param document the tree
   * @param plan front, planting angle, cuts and proposals; without one the tree as measured
   * @param trial the bent pose; without one nothing is bent
   * @param inLeaf whether it is shown in leaf
   */
  public record Subject(
      Document document, Optional<Plan> plan, Optional<TrialResult> trial, boolean inLeaf) {
    /** A tree shown bare. */
    public Subject(Document document, Optional<Plan> plan, Optional<TrialResult> trial) {
      this(document, plan, trial, false);
    }

    Scene scene(Optional<Course> course) {
      return inLeaf
          ? Scene.inLeaf(document, plan, trial, course)
          : Scene.of(document, plan, trial, course);
    }

    Scene sceneBeside(StrainScale others) {
      return Scene.beside(others, document, plan, trial);
    }
  }

  /**
   * A tree with faults of its structure.
   *
   * @param document the tree
   * @param named the plan a person named; empty for the tree as measured
   * @param seen front, planting angle and cuts; empty where nothing is said of them
   * @param hasFront whether a front is chosen
   * @param flaws a mark for each fault, at places of the tree as measured
   * @param verdict how much was found
   */
  public record Reviewed(
      Document document,
      Optional<Plan> named,
      Optional<Plan> seen,
      boolean hasFront,
      List<Mark.Flaw> flaws,
      String verdict) {
    public Reviewed {
      flaws = List.copyOf(flaws);
    }
  }

  private interface Drawing {
    BufferedImage draw() throws NoGraphicsException, InputException;
  }

  /**
   * The tree before and after a trial ({@link Picture#beforeAfter}).
   *
   * @throws InputException if this machine cannot draw, or lacks the letters of a name
   */
  public static PrintedPicture beforeAfter(
      Document document, Plan plan, TrialResult trial, PictureSize size) throws InputException {
    return beforeAfter(document, plan, trial, Optional.empty(), size);
  }

  /**
   * The same with a bend in the course of time.
   *
   * @param course its steps and what is left over time; empty for the trial alone
   * @throws InputException if this machine cannot draw, or lacks the letters of a name
   */
  public static PrintedPicture beforeAfter(
      Document document, Plan plan, TrialResult trial, Optional<Course> course, PictureSize size)
      throws InputException {
    return beforeAfter(new Subject(document, Optional.of(plan), Optional.of(trial)), course, size);
  }

  /**
   * The same of a tree that may be in leaf.
   *
   * @throws InputException if this machine cannot draw, or lacks the letters of a name
   */
  public static PrintedPicture beforeAfter(
      Subject subject, Optional<Course> course, PictureSize size) throws InputException {
    return drawn(() -> Picture.beforeAfter(subject, course, size));
  }

  /**
   * The tree from one side ({@link Picture#view}).
   *
   * @throws InputException if this machine cannot draw, or lacks the letters of a name
   */
  public static PrintedPicture view(Subject subject, ViewAngle angle, PictureSize size)
      throws InputException {
    return drawn(() -> Picture.view(subject, angle, size));
  }

  /**
   * Fronts of a tree side by side, each as it stands, with its words under it.
   *
   * @param subject the tree, and the plan whose cuts are made
   * @param text heading, and at least one card
   * @throws InputException if this machine cannot draw, or lacks the letters of a name
   */
  public static PrintedPicture fronts(Subject subject, FrontsWords text, PictureSize size)
      throws InputException {
    return drawn(() -> FrontsSheet.fronts(subject, text, size));
  }

  /**
   * The map of the score over azimuth and tilt.
   *
   * @throws InputException if this machine lacks the letters of a name
   */
  public static PrintedPicture frontMap(FrontMap map, FrontsWords text, PictureSize size)
      throws InputException {
    return drawn(() -> FrontsSheet.map(map, text, size));
  }

  /**
   * The root base of one front from above.
   *
   * @param answer its account, with a root base
   * @throws InputException if a name has letters that no typeface of this machine has
   */
  public static PrintedPicture rootBase(GroundAnswer answer, FrontsWords text, PictureSize size)
      throws InputException {
    return drawn(() -> FrontsSheet.roots(answer, text, size));
  }

  /**
   * The tree with numbered marks at faults of its structure ({@link Picture#review}).
   *
   * @throws InputException if this machine cannot draw, or lacks the letters of a name
   */
  public static PrintedPicture review(Reviewed reviewed, PictureSize size) throws InputException {
    return drawn(() -> Picture.review(reviewed, size));
  }

  /**
   * Plans of one tree side by side, each from its own front ({@link Picture#plans}).
   *
   * @param subjects one to four, each with its plan
   * @param size of the whole
   * @throws InputException if this machine cannot draw, or lacks the letters of a name
   */
  public static PrintedPicture plans(List<Subject> subjects, PictureSize size)
      throws InputException {
    return drawn(() -> Picture.plans(subjects, size));
  }

  private static PrintedPicture drawn(Drawing drawing) throws InputException {
    try {
      return new PrintedPicture(drawing.draw());
    } catch (NoGraphicsException e) {
      throw new InputException(
          Problem.fault(
              Place.of("picture"),
              "no-graphics",
              e.getMessage(),
              "Or leave the picture out: everything else works without it"));
    }
  }

  /**
   * Writes the picture, whole or not at all.
   *
   * @throws InputException if the file cannot be written there; nothing is changed then
   */
  public void write(Path file) throws InputException {
    PictureFile.write(image, file);
  }
}
