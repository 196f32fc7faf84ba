// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.scene.Visibility;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.work.Workspace;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.KeyStroke;

/** Hides, isolates and dims picked branches: the picked segments with all that grows on them. */
final class Branches {
  private final Workspace work;
  private final Showing showing;

  Branches(Workspace work, Showing showing) {
    this.work = work;
    this.showing = showing;
  }

  /** Segments with all that grows on them. */
  static Set<String> withAllOn(Skeleton skeleton, List<String> segments) {
    Set<String> found = new HashSet<>();
    Deque<Integer> waiting = new ArrayDeque<>();
    segments.stream().filter(skeleton::has).forEach(id -> waiting.add(skeleton.indexOf(id)));
    while (!waiting.isEmpty()) {
      int i = waiting.remove();
      if (found.add(skeleton.segment(i).id())) {
        waiting.addAll(skeleton.children(i));
      }
    }
    return found;
  }

  private Set<String> picked() {
    return withAllOn(showing.tree().skeleton(), work.selection().segments());
  }

  void hide() {
    Visibility now = showing.looks().visibility();
    set(new Visibility(union(now.hidden(), picked()), now.dimmed()));
  }

  void isolate() {
    Set<String> picked = picked();
    Set<String> others =
        work.document().tree().segments().stream()
            .map(segment -> segment.id())
            .filter(id -> !picked.contains(id))
            .collect(Collectors.toSet());
    set(new Visibility(others, Set.of()));
  }

  void dim() {
    Visibility now = showing.looks().visibility();
    set(new Visibility(now.hidden(), union(now.dimmed(), picked())));
  }

  void showAll() {
    set(Visibility.ALL);
  }

  private static Set<String> union(Set<String> one, Set<String> other) {
    Set<String> all = new HashSet<>(one);
    all.addAll(other);
    return all;
  }

  private void set(Visibility visibility) {
    showing.setLooks(showing.looks().with(visibility));
  }

  private boolean isPicked() {
    return !work.selection().segments().isEmpty();
  }

  List<Command> commands() {
    return List.of(
        new Command(
            "view.hide",
            "Hide",
            'H',
            key(KeyEvent.VK_H),
            "Hide the picked branches with all that grows on them",
            this::hide,
            this::isPicked),
        new Command(
            "view.isolate",
            "Only these",
            'O',
            key(KeyEvent.VK_I),
            "Show the picked branches alone",
            this::isolate,
            this::isPicked),
        new Command(
            "view.dim",
            "Dim",
            'D',
            shift(KeyEvent.VK_I),
            "Show the picked branches faintly",
            this::dim,
            this::isPicked),
        new Command(
            "view.show-all",
            "Show all",
            'S',
            shift(KeyEvent.VK_H),
            "Show every branch again",
            this::showAll,
            () -> !showing.looks().visibility().isAll()));
  }

  private static Optional<KeyStroke> key(int code) {
    return Optional.of(Keys.plain(code));
  }

  private static Optional<KeyStroke> shift(int code) {
    return Optional.of(KeyStroke.getKeyStroke(code, InputEvent.SHIFT_DOWN_MASK));
  }
}
