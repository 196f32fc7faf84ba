// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasLayer;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.look.Pages;
import boughwright.viewer.window.sketch.draw.DrawTool;
import boughwright.viewer.window.sketch.draw.MoveTool;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.sketch.draw.Tools;
import boughwright.viewer.window.sketch.draw.WoundTool;
import boughwright.viewer.window.sketch.form.AddForm;
import boughwright.viewer.window.sketch.form.PadForm;
import boughwright.viewer.window.sketch.form.TreeForm;
import boughwright.viewer.window.sketch.form.WoundForm;
import boughwright.viewer.window.sketch.photo.PhotoFiles;
import boughwright.viewer.window.sketch.photo.PhotoForm;
import boughwright.viewer.window.sketch.photo.PhotoImages;
import boughwright.viewer.window.sketch.photo.PhotoLayer;
import boughwright.viewer.window.sketch.table.TablePane;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;

/**
 * Measuring the tree: what it is, its segments typed, drawn or in a table, wounds, pads, photos.
 */
public final class MeasurePanel implements ModePanel {
  private final Workspace workspace;
  private final Canvas canvas;
  private final Shape shape;
  private final Tools tools;
  private final Pages pages = new Pages("measure", MeasurePages.ALL);
  private final BranchCommands branches;
  private final AddForm add;
  private final TablePane table;
  private final PhotoForm photos;
  private final PhotoFiles photoFiles;
  private final PhotoImages images;
  private Set<String> known;
  private final JToggleButton draw = tool("tree.draw", "Draw", 'w');
  private final JToggleButton move = tool("tree.move-node", "Move nodes", 'v');
  private final JToggleButton wound = tool("tree.wound", "Mark on the bark", 'k');

  public MeasurePanel(Workspace workspace, Canvas canvas, Background background) {
    this.workspace = workspace;
    this.canvas = canvas;
    shape = new Shape(workspace);
    known = ids();
    tools = new Tools(canvas);
    branches = new BranchCommands(workspace, shape, canvas.component());
    add = new AddForm(workspace, shape);
    table = new TablePane(workspace, shape);
    images = new PhotoImages(workspace, background, () -> photosRead());
    photoFiles = new PhotoFiles(shape, canvas, background, images);
    photos = new PhotoForm(workspace, canvas, shape, photoFiles);
    photos.join(tools);
    tools.join(draw, new DrawTool(workspace, canvas, shape));
    tools.join(move, new MoveTool(workspace, canvas, shape));
    tools.join(
        wound,
        new WoundTool(workspace, canvas, shape, () -> workspace.document().tree().measuredOn()));
    canvas.add(new PhotoLayer(workspace, canvas, shape, images), CanvasLayer.Place.BEHIND);
    canvas.add(pen -> photos.tellState(), CanvasLayer.Place.OVER);
    pages.add(MeasurePages.TREE, new TreeForm(workspace).component());
    pages.add(MeasurePages.SEGMENTS, segments());
    pages.add(MeasurePages.TABLE, table.component());
    pages.add(MeasurePages.WOUNDS, column(new WoundForm(workspace, shape, wound).component()));
    pages.add(MeasurePages.FOLIAGE, column(new PadForm(workspace, shape).component()));
    pages.add(MeasurePages.PHOTOS, column(photos.component()));
    pages.show(MeasurePages.SEGMENTS);
    images.fetch();
    workspace.listen(this::heard);
  }

  private static JToggleButton tool(String name, String words, char letter) {
    JToggleButton button = Controls.toggle(words);
    button.setMnemonic(letter);
    return Controls.named(button, name, words);
  }

  private static JPanel column(JComponent... parts) {
    JPanel column = Controls.column();
    for (JComponent part : parts) {
      column.add(part, "growx, wmin 0");
    }
    return column;
  }

  private JPanel segments() {
    List<JButton> buttons = new ArrayList<>();
    for (Command command : branches.all()) {
      JButton button = Controls.button(command.name());
      Controls.named(button, "measure." + command.id(), command.name());
      button.setToolTipText(command.tip() + "  (" + Keys.words(command.key().orElseThrow()) + ")");
      button.addActionListener(
          event -> {
            if (command.enabled().getAsBoolean()) {
              command.run().run();
            }
          });
      buttons.add(button);
    }
    JPanel picked =
        Controls.section(
            "Picked segments",
            Controls.row(buttons.get(0), buttons.get(1)),
            Controls.row(buttons.get(2), buttons.get(3)),
            buttons.get(4));
    JPanel column = column(Controls.section("On the tree", Controls.row(draw, move)));
    column.add(add.component(), "growx, wmin 0, gaptop 10");
    column.add(picked, "growx, wmin 0, gaptop 10");
    return column;
  }

  private void photosRead() {
    canvas.redraw();
    if (photos != null) {
      photos.refresh();
    }
  }

  private void heard(Topic topic) {
    switch (topic) {
      case OPENED -> {
        tools.none();
        images.seekAgain();
        known = ids();
      }
      case DOCUMENT -> {
        images.fetch();
        reveal();
      }
      default -> {}
    }
  }

  private Set<String> ids() {
    Set<String> ids = new HashSet<>();
    workspace.document().tree().segments().forEach(segment -> ids.add(segment.id()));
    return ids;
  }

  /** Brings segments that are new into view. */
  private void reveal() {
    Set<String> now = ids();
    Set<String> fresh = new HashSet<>(now);
    fresh.removeAll(known);
    known = now;
    if (component().isShowing() && !fresh.isEmpty()) {
      Skeleton skeleton = shape.skeleton();
      canvas.reveal(fresh.stream().map(id -> skeleton.end(skeleton.indexOf(id))).toList());
    }
  }

  /** Adds a photo, as when one is dropped on the window. */
  public void addPhoto(Path file) {
    pages.show(MeasurePages.PHOTOS);
    photoFiles.add(file);
  }

  @Override
  public String name() {
    return "Measure";
  }

  @Override
  public char mnemonic() {
    return 'M';
  }

  @Override
  public JComponent component() {
    return pages.component();
  }

  @Override
  public List<Command> commands() {
    List<Command> all = new ArrayList<>();
    all.add(
        here(
                "tree.add",
                "Add a segment",
                'A',
                KeyEvent.VK_INSERT,
                "Goes to the next segment to type")
            .does(this::goToAdd));
    all.add(
        here(
                "tree.add-on",
                "Add on another segment",
                'n',
                KeyEvent.VK_F3,
                "Goes to the place the next segment grows on")
            .does(this::goToPlace));
    all.add(
        here(
                "tree.table",
                "Table of segments",
                'T',
                KeyEvent.VK_F4,
                "Shows all segments as a table")
            .does(this::goToTable));
    all.add(
        here(
                "tree.draw",
                "Draw segments",
                'w',
                KeyEvent.VK_F7,
                "Draws segments on the tree with the mouse")
            .does(() -> tools.toggle(draw)));
    all.add(
        here(
                "tree.move-node",
                "Move nodes",
                'v',
                KeyEvent.VK_F8,
                "Moves nodes of the tree with the mouse")
            .does(() -> tools.toggle(move)));
    all.add(
        here(
                "wound.mark",
                "Mark wounds",
                'k',
                KeyEvent.VK_F9,
                "Marks wounds on the bark with the mouse")
            .does(
                () -> {
                  pages.show(MeasurePages.WOUNDS);
                  tools.toggle(wound);
                }));
    all.addAll(branches.all());
    all.add(
        new Command(
            "photo.add",
            "Add a photo\u2026",
            'h',
            Optional.empty(),
            "Puts a photo behind the tree to trace over",
            this::choosePhoto,
            () -> true));
    return all;
  }

  private void choosePhoto() {
    pages.show(MeasurePages.PHOTOS);
    photoFiles.choose(component());
  }

  private void goToAdd() {
    pages.show(MeasurePages.SEGMENTS);
    add.focus();
  }

  private void goToPlace() {
    pages.show(MeasurePages.SEGMENTS);
    add.focusPlace();
  }

  private void goToTable() {
    pages.show(pages.shown() == MeasurePages.TABLE ? MeasurePages.SEGMENTS : MeasurePages.TABLE);
    if (pages.shown() == MeasurePages.TABLE) {
      table.focus();
    }
  }

  /** A command that works while this panel is shown. */
  private record Here(
      String id, String name, char letter, int key, String tip, BooleanSupplier enabled) {
    Command does(Runnable run) {
      return new Command(id, name, letter, Optional.of(Keys.plain(key)), tip, run, enabled);
    }
  }

  private Here here(String id, String name, char letter, int key, String tip) {
    return new Here(id, name, letter, key, tip, () -> component().isShowing());
  }

  @Override
  public void shown() {
    canvas.measured(true);
    photos.refresh();
  }

  @Override
  public void hidden() {
    tools.none();
    canvas.measured(false);
  }
}
