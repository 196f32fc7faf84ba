// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.gl.NoGraphicsException;
import boughwright.viewer.gl.SceneRenderer;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.Stand;
import boughwright.viewer.scene.StrainScale;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.scene.Wording;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Pictures of a tree, made without a window and without a display. */
public final class Picture {
  private static final String REVIEW_NOTE =
      "Judged by rules of the trade that have no source but practice; the person decides.";

  private Picture() {}

  /**
   * The tree before and after a trial, from the front and square to it.
   *
   * <p>Without a pose that holds, the tree as measured and the reason.
   *
   * @throws NoGraphicsException if this machine cannot draw
   * @throws InputException if a name has letters that no typeface of this machine has
   */
  public static BufferedImage beforeAfter(
      Document document, Plan plan, TrialResult trial, PictureSize size)
      throws NoGraphicsException, InputException {
    return beforeAfter(document, plan, trial, Optional.empty(), size);
  }

  /**
   * The same with a bend in the course of time: the pose held in the end, those on the way, what
   * stays, and what is left of the pull.
   *
   * @throws NoGraphicsException if this machine cannot draw
   * @throws InputException if a name has letters that no typeface of this machine has
   */
  public static BufferedImage beforeAfter(
      Document document, Plan plan, TrialResult trial, Optional<Course> course, PictureSize size)
      throws NoGraphicsException, InputException {
    return beforeAfter(
        new PrintedPicture.Subject(document, Optional.of(plan), Optional.of(trial)), course, size);
  }

  /**
   * The same of a tree that may be in leaf.
   *
   * @throws NoGraphicsException if this machine cannot draw
   * @throws InputException if a name has letters that no typeface of this machine has
   */
  static BufferedImage beforeAfter(
      PrintedPicture.Subject subject, Optional<Course> course, PictureSize size)
      throws NoGraphicsException, InputException {
    Scene scene = subject.scene(course);
    ViewAngle front = ViewAngle.level(scene.front());
    boolean left = isLeftSideBetter(scene, front);
    ViewAngle side = ViewAngle.level(scene.front() + (left ? Math.PI / 2 : -Math.PI / 2));
    List<Arrangement.Wanted> views =
        List.of(
            new Arrangement.Wanted(front, "Front", from(front)),
            new Arrangement.Wanted(
                side, left ? "From the tree's left" : "From the tree's right", from(side)));
    return draw(new Drawn(subject, scene, course), views, size);
  }

  /**
   * The tree from one side, as the window shows it.
   *
   * @throws NoGraphicsException if this machine cannot draw
   * @throws InputException if a name has letters that no typeface of this machine has
   */
  public static BufferedImage view(
      PrintedPicture.Subject subject, ViewAngle angle, PictureSize size)
      throws NoGraphicsException, InputException {
    Scene scene = subject.scene(Optional.empty());
    boolean front = Math.abs(Math.sin((angle.azimuth() - scene.front()) / 2)) < 1e-3;
    String name = front && subject.plan().isPresent() ? "Front" : "View";
    return draw(
        new Drawn(subject, scene, Optional.empty()),
        List.of(new Arrangement.Wanted(angle, name, from(angle))),
        size);
  }

  /**
   * The tree from the front and square to it with numbered marks at faults of its structure, and a
   * list of them.
   *
   * @throws NoGraphicsException if this machine cannot draw
   * @throws InputException if a name has letters that no typeface of this machine has
   */
  public static BufferedImage review(PrintedPicture.Reviewed reviewed, PictureSize size)
      throws NoGraphicsException, InputException {
    Scene bare = Scene.of(reviewed.document(), reviewed.seen(), Optional.empty());
    Stand stand = Stand.of(reviewed.seen().flatMap(Plan::planting), bare.base());
    List<Mark> marks = new ArrayList<>();
    for (Mark.Flaw flaw : reviewed.flaws()) {
      marks.add(new Mark.Flaw(stand.place(flaw.at()), flaw.number(), flaw.words()));
    }
    Scene scene = bare.withMarks(marks);
    ViewAngle front = ViewAngle.level(scene.front());
    ViewAngle side = ViewAngle.level(scene.front() - Math.PI / 2);
    String name = reviewed.hasFront() ? "Front" : "View";
    List<Arrangement.Wanted> views =
        List.of(
            new Arrangement.Wanted(front, name, from(front)),
            new Arrangement.Wanted(side, "From the tree's right", from(side)));
    Heading heading = Heading.review(reviewed.document(), reviewed.named(), reviewed.verdict());
    requireLetters(heading.name() + heading.about());
    try (SceneRenderer renderer = SceneRenderer.open();
        Page page = new Page(size)) {
      new Composer(page, scene, heading, List.of(REVIEW_NOTE)).compose(views, renderer);
      return page.image();
    }
  }

  /**
   * Trees beside one another, each from its own front, all in one scale, on one soil line, and with
   * one key to their strain.
   *
   * @param subjects what is drawn, from left to right
   * @param size of the whole; no part is made smaller than a picture can be
   * @throws NoGraphicsException if this machine cannot draw
   * @throws InputException if a name has letters that no typeface of this machine has
   */
  public static BufferedImage plans(List<PrintedPicture.Subject> subjects, PictureSize size)
      throws NoGraphicsException, InputException {
    PictureSize part =
        new PictureSize(
            Math.max(PictureSize.SMALLEST_WIDTH, size.width() / subjects.size()), size.height());
    List<Drawn> all = new ArrayList<>();
    List<Scene> scenes = scenes(subjects);
    for (int n = 0; n < subjects.size(); n++) {
      all.add(new Drawn(subjects.get(n), scenes.get(n), Optional.empty()));
    }
    return SideBySide.draw(all, part);
  }

  /** The scenes of bare trees; one colour stands for one strain in all of them. */
  static List<Scene> scenes(List<PrintedPicture.Subject> subjects) {
    List<Scene> alone = subjects.stream().map(subject -> subject.scene(Optional.empty())).toList();
    return alone.stream()
        .flatMap(scene -> scene.scale().stream())
        .max(Comparator.comparingDouble(StrainScale::limit))
        .map(widest -> subjects.stream().map(one -> one.sceneBeside(widest)).toList())
        .orElse(alone);
  }

  /** What is drawn. */
  record Drawn(PrintedPicture.Subject subject, Scene scene, Optional<Course> course) {
    /** What puts it on a page. */
    Composer on(Page page) throws InputException {
      Heading heading = Heading.of(subject.document(), subject.plan(), subject.trial());
      requireLetters(heading.name() + heading.about() + heading.reason() + heading.change());
      return new Composer(page, scene, heading, Footnote.of(subject.trial()));
    }
  }

  private static BufferedImage draw(Drawn drawn, List<Arrangement.Wanted> views, PictureSize size)
      throws NoGraphicsException, InputException {
    try (SceneRenderer renderer = SceneRenderer.open();
        Page page = new Page(size)) {
      drawn.on(page).compose(views, renderer, drawn.course());
      return page.image();
    }
  }

  /** A tree from its front. */
  static Arrangement.Wanted front(Scene scene) {
    ViewAngle front = ViewAngle.level(scene.front());
    return new Arrangement.Wanted(front, "Front", from(front));
  }

  private static String from(ViewAngle angle) {
    String level = "from azimuth " + Wording.azimuth(angle.azimuth());
    long above = Math.round(Math.toDegrees(angle.elevation()));
    return above == 0
        ? level
        : level + ", " + Math.abs(above) + "° " + (above > 0 ? "above" : "below");
  }

  /** The side on which the place bent hardest faces the viewer; the right where that is even. */
  private static boolean isLeftSideBetter(Scene scene, ViewAngle front) {
    return scene.marks().stream()
        .map(Picture::stretched)
        .flatMap(Optional::stream)
        .anyMatch(outward -> outward.dot(front.right().vector()) < -1e-6);
  }

  private static Optional<Vector3> stretched(Mark mark) {
    if (mark instanceof Mark.Hardest hardest) {
      return Optional.of(hardest.outward());
    }
    return mark instanceof Mark.Failure failure && failure.mode() == FailureMode.CRACK
        ? Optional.of(failure.outward())
        : Optional.empty();
  }

  static void requireLetters(String words) throws InputException {
    String missing = Lettering.undrawable(words);
    if (!missing.isEmpty()) {
      throw new InputException(
          Problem.fault(
              Place.of("picture", "tree name"),
              "no-letters",
              "no typeface on this machine has " + missing,
              "Install one that has, such as Noto Sans, or leave the picture out"));
    }
  }
}
