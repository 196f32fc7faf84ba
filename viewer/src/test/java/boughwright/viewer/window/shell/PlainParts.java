// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasLayer;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.canvas.Facing;
import boughwright.viewer.window.canvas.Hit;
import boughwright.viewer.window.canvas.NoFacing;
import boughwright.viewer.window.canvas.Preview;
import boughwright.viewer.window.canvas.Ray;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Explanation;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.look.Reading;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A window's filling that computes and draws nothing, to test what stands round it. */
final class PlainParts implements PartsMaker {
  @Override
  public Parts make(Workspace workspace, Background background) {
    return new Parts(
        new PlainCanvas(),
        List.of(new PlainPanel("Look", 'L', workspace), new PlainPanel("Measure", 'M', workspace)),
        Runnable::run,
        Optional.empty(),
        () -> {});
  }

  /** A blank sheet. */
  private static final class PlainCanvas implements Canvas {
    private final JPanel sheet = new JPanel();

    PlainCanvas() {
      sheet.setFocusable(true);
      Controls.named(sheet, "canvas", "The tree");
    }

    @Override
    public JComponent component() {
      return sheet;
    }

    @Override
    public Optional<Hit> hit(double x, double y) {
      return Optional.empty();
    }

    @Override
    public Ray ray(double x, double y) {
      return new Ray(Point3.ORIGIN, new Direction3(0, 1, 0));
    }

    @Override
    public Camera.Pixel project(Point3 point) {
      return new Camera.Pixel(0, 0);
    }

    @Override
    public Point3 beside(Point3 through, double x, double y) {
      return through;
    }

    @Override
    public Facing facing() {
      return new NoFacing();
    }

    @Override
    public double azimuth() {
      return 0;
    }

    @Override
    public double elevation() {
      return 0;
    }

    @Override
    public void lookFlatFrom(double azimuth, List<Point3> inView) {
      // draws nothing
    }

    @Override
    public boolean isShown(String segment) {
      return true;
    }

    @Override
    public void reveal(List<Point3> points) {}

    @Override
    public void use(CanvasTool tool) {
      // draws nothing
    }

    @Override
    public void useNone() {
      // draws nothing
    }

    @Override
    public void preview(Optional<Preview> preview) {
      // draws nothing
    }

    @Override
    public void add(CanvasLayer layer, CanvasLayer.Place place) {
      // draws nothing
    }

    @Override
    public void measured(boolean on) {
      // shows nothing
    }

    @Override
    public void redraw() {
      // draws nothing
    }
  }

  /** A panel with one field and one reading. */
  private static final class PlainPanel implements ModePanel {
    private final String name;
    private final char mnemonic;
    private final JPanel panel = Controls.column();

    PlainPanel(String name, char mnemonic, Workspace workspace) {
      this.name = name;
      this.mnemonic = mnemonic;
      String id = "plain." + name.toLowerCase(java.util.Locale.ROOT);
      QuantityField field =
          new QuantityField(
              new QuantityField.Asked(id + ".length", "Length", Measure.LENGTH, 0, 10),
              workspace.units());
      field.setValue(0.0254);
      Reading reading = new Reading(id + ".reading", "Tension");
      reading.show("25 N", "", new Explanation("A pull.", "Not sure.", "Invented."));
      panel.add(Controls.section(name, field, reading));
      workspace.listen(
          topic -> {
            if (topic == Topic.UNITS) {
              field.use(workspace.units());
            }
          });
    }

    @Override
    public String name() {
      return name;
    }

    @Override
    public char mnemonic() {
      return mnemonic;
    }

    @Override
    public JComponent component() {
      return panel;
    }

    @Override
    public List<Command> commands() {
      return List.of();
    }

    @Override
    public void shown() {
      // nothing to start
    }

    @Override
    public void hidden() {
      // nothing to stop
    }
  }
}
