// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.edit.ProposalEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.reach.Aim;
import boughwright.physics.reach.AnchorPlace;
import boughwright.physics.reach.Pulled;
import boughwright.physics.trial.LineTrial;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.canvas.Hit;
import boughwright.viewer.window.canvas.Pointer;
import boughwright.viewer.window.canvas.Ray;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.work.Answer;
import boughwright.viewer.window.work.Trials;
import boughwright.viewer.window.work.Workspace;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.Optional;

/** Pulls at the tree: a place on the wood, a line of the plan, or the anchor of what is pulled. */
final class PullTool implements CanvasTool {
  /** How near the mouse must come to a handle [user pixels]. */
  private static final double NEAR = 18;

  /** The mouse must go so far before it counts as a drag [user pixels]. */
  private static final double DRAG = 4;

  private static final double RING = 9;
  private static final float THIN = 2;
  private static final float WIDE = 5;

  /** How long a force is drawn [m/N]. */
  private static final double FORCE = 0.002;

  private static final double LONGEST_FORCE = 0.12;

  private final Workspace workspace;
  private final Canvas canvas;
  private final Trials trials;
  private final Pulling pulling;
  private Optional<Held> held = Optional.empty();
  private Optional<Camera.Pixel> pointer = Optional.empty();

  /**
   * What the mouse holds.
   *
   * @param through a point of it, as far as it is known when the mouse takes it
   * @param from where the mouse took it
   * @param anchor whether it is the anchor
   * @param moved whether the mouse went far enough
   */
  private record Held(Point3 through, Camera.Pixel from, boolean anchor, boolean moved) {}

  PullTool(Workspace workspace, Canvas canvas, Trials trials, Pulling pulling) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.trials = trials;
    this.pulling = pulling;
  }

  @Override
  public String hint() {
    return "Drag a branch where it should come, or a line to change it. Beside the wood a drag turns"
        + " the tree.";
  }

  @Override
  public boolean pressed(Pointer at) {
    Camera.Pixel pixel = new Camera.Pixel(at.x(), at.y());
    pointer = Optional.of(pixel);
    Optional<Pulled.Line> drawn = pulling.draft().flatMap(Draft::drawn);
    if (drawn.isPresent() && isNear(drawn.get().at().anchor(), pixel)) {
      held = Optional.of(new Held(drawn.get().at().anchor(), pixel, true, false));
      return true;
    }
    Optional<Proposing.Changing> line = lineAt(pixel);
    if (line.isPresent()) {
      pulling.change(line.get());
      held = Optional.of(new Held(pad(line.get().line()), pixel, false, false));
      return true;
    }
    Optional<Hit> hit = canvas.hit(at.x(), at.y());
    if (hit.isEmpty()) {
      return false;
    }
    pulling.grab(hit.get().spot());
    held = Optional.of(new Held(hit.get().at(), pixel, false, false));
    return true;
  }

  private Point3 pad(GuyLine line) {
    return trial(line).map(LineTrial::pad).orElse(Point3.ORIGIN);
  }

  private Optional<LineTrial> trial(GuyLine line) {
    return trials.shown().map(Answer::trial).stream()
        .flatMap(trial -> trial.lines().stream())
        .filter(one -> one.id().equals(line.id()))
        .findFirst();
  }

  /** The line of the plan whose pad is under the mouse, while nothing else is pulled. */
  private Optional<Proposing.Changing> lineAt(Camera.Pixel pixel) {
    Optional<Plan> plan = workspace.plan();
    if (plan.isEmpty() || trials.isOfPlanBefore()) {
      return Optional.empty();
    }
    for (Proposal proposal : plan.get().proposals()) {
      for (GuyLine line : proposal.guyLines()) {
        if (trial(line).filter(one -> isNear(one.pad(), pixel)).isPresent()) {
          return Optional.of(
              new Proposing.Changing(
                  new ProposalEdits.Where(plan.get().id(), proposal.id()), line));
        }
      }
    }
    return Optional.empty();
  }

  private boolean isNear(Point3 point, Camera.Pixel pixel) {
    return distance(canvas.project(point), pixel) < NEAR;
  }

  private static double distance(Camera.Pixel a, Camera.Pixel b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  @Override
  public void dragged(Pointer at) {
    Camera.Pixel pixel = new Camera.Pixel(at.x(), at.y());
    pointer = Optional.of(pixel);
    if (held.isEmpty()) {
      return;
    }
    Held one = held.get();
    boolean moved = one.moved || distance(one.from, pixel) > DRAG;
    held = Optional.of(new Held(one.through, one.from, one.anchor, moved));
    if (moved && !one.anchor) {
      pulling.to(sight(one, pixel));
    }
    canvas.redraw();
  }

  /** The line of sight on which the place is wanted: as far from its own as the mouse went. */
  private Aim sight(Held one, Camera.Pixel pixel) {
    boolean isLine = pulling.changing().isPresent();
    Point3 place = isLine ? one.through : pulling.start().orElse(one.through);
    Camera.Pixel from = canvas.project(place);
    Ray ray = canvas.ray(from.x() + pixel.x() - one.from.x(), from.y() + pixel.y() - one.from.y());
    return new Aim.Sight(ray.from(), ray.along());
  }

  @Override
  public void released(Pointer at) {
    Camera.Pixel pixel = new Camera.Pixel(at.x(), at.y());
    Optional<Held> one = held;
    held = Optional.empty();
    if (one.isEmpty()) {
      return;
    }
    if (one.get().anchor) {
      nearest(pixel).ifPresent(anchor -> pulling.fix(Optional.of(anchor)));
    } else if (one.get().moved) {
      pulling.settle(sight(one.get(), pixel));
    } else {
      pulling.holdAsItIs();
    }
    canvas.redraw();
  }

  private Optional<AnchorPlace> nearest(Camera.Pixel pixel) {
    return pulling.anchors().stream()
        .min(Comparator.comparingDouble(one -> distance(canvas.project(one.at()), pixel)))
        .filter(one -> distance(canvas.project(one.at()), pixel) < 3 * NEAR);
  }

  @Override
  public void moved(Pointer at) {
    pointer = Optional.of(new Camera.Pixel(at.x(), at.y()));
  }

  @Override
  public void cancelled() {
    held = Optional.empty();
    pulling.drop();
  }

  @Override
  public void paint(Graphics2D pen) {
    if (held.filter(one -> one.anchor).isPresent()) {
      candidates(pen);
    }
    pulling.draft().ifPresent(draft -> paint(pen, draft));
  }

  private void candidates(Graphics2D pen) {
    Optional<AnchorPlace> chosen = pointer.flatMap(this::nearest);
    for (AnchorPlace anchor : pulling.anchors()) {
      boolean here = chosen.equals(Optional.of(anchor));
      Shape mark = diamond(canvas.project(anchor.at()), here ? RING : RING / 2);
      outlined(pen, mark, Theme.colour(Shade.ACCENT), here);
    }
  }

  private void paint(Graphics2D pen, Draft draft) {
    Camera.Pixel at = canvas.project(draft.comesTo());
    Camera.Pixel hand = canvas.project(draft.target());
    draft
        .drawn()
        .ifPresent(
            line -> {
              Camera.Pixel pad = canvas.project(line.at().pad());
              Camera.Pixel anchor = canvas.project(line.at().anchor());
              stroke(pen, new Line2D.Double(pad.x(), pad.y(), anchor.x(), anchor.y()));
              outlined(pen, diamond(anchor, RING), Theme.colour(Shade.ACCENT), true);
              outlined(pen, ring(pad, RING / 2), Theme.colour(Shade.ACCENT), true);
            });
    draft.force().ifPresent(force -> arrow(pen, draft.comesTo(), force));
    if (distance(at, hand) > RING) {
      dashed(pen, new Line2D.Double(at.x(), at.y(), hand.x(), hand.y()));
    }
    outlined(pen, ring(hand, RING), Theme.colour(Shade.INK), false);
  }

  private void arrow(Graphics2D pen, Point3 from, Vector3 force) {
    if (!(force.norm() > 0)) {
      return;
    }
    double length = Math.min(LONGEST_FORCE, FORCE * force.norm());
    Camera.Pixel a = canvas.project(from);
    Camera.Pixel b = canvas.project(from.plus(force.direction().times(length)));
    stroke(pen, new Line2D.Double(a.x(), a.y(), b.x(), b.y()));
    double turn = Math.atan2(b.y() - a.y(), b.x() - a.x());
    Path2D head = new Path2D.Double();
    head.moveTo(0, 0);
    head.lineTo(-2 * RING, RING * 0.8);
    head.lineTo(-2 * RING, -RING * 0.8);
    head.closePath();
    AffineTransform there = AffineTransform.getTranslateInstance(b.x(), b.y());
    there.rotate(turn);
    outlined(pen, head.createTransformedShape(there), Theme.colour(Shade.ACCENT), true);
  }

  private static Shape ring(Camera.Pixel at, double radius) {
    return new Ellipse2D.Double(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius);
  }

  private static Shape diamond(Camera.Pixel at, double radius) {
    AffineTransform turned = AffineTransform.getRotateInstance(Math.PI / 4, at.x(), at.y());
    return turned.createTransformedShape(
        new Rectangle2D.Double(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius));
  }

  private static void stroke(Graphics2D pen, Shape line) {
    pen.setStroke(new BasicStroke(WIDE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.setColor(Theme.colour(Shade.PAPER));
    pen.draw(line);
    pen.setStroke(new BasicStroke(THIN + 1, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.setColor(Theme.colour(Shade.ACCENT));
    pen.draw(line);
  }

  private static void dashed(Graphics2D pen, Shape line) {
    float[] dashes = {6, 6};
    pen.setStroke(
        new BasicStroke(THIN, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0));
    pen.setColor(Theme.colour(Shade.INK));
    pen.draw(line);
  }

  private static void outlined(Graphics2D pen, Shape mark, java.awt.Color colour, boolean filled) {
    pen.setStroke(new BasicStroke(WIDE));
    pen.setColor(Theme.colour(Shade.PAPER));
    pen.draw(mark);
    pen.setColor(colour);
    if (filled) {
      pen.fill(mark);
    } else {
      pen.setStroke(new BasicStroke(THIN));
      pen.draw(mark);
    }
  }
}
