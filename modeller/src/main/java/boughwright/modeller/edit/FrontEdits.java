// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.problem.Amount;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.NameRules;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Changes of what a person wishes of the front, and of the fronts they marked. */
public final class FrontEdits {
  private static final Named<MarkedFront> MARKED = new Named<>("marked front", MarkedFront::id);

  /** Beyond this a weight drowns all others, which then count for nothing [1]. */
  private static final double LARGEST_WEIGHT = 1000;

  private FrontEdits() {}

  private interface Change {
    void on(List<MarkedFront> marked) throws InputException;
  }

  private interface Wish {
    FrontWishes of(FrontWishes wishes) throws InputException;
  }

  private static Edit marked(String name, Change change) {
    return new Edit(
        name,
        document -> {
          List<MarkedFront> all = new ArrayList<>(document.fronts().marked());
          change.on(all);
          return document.withFronts(document.fronts().withMarked(all));
        });
  }

  private static Edit wish(String name, Wish wish) {
    return new Edit(
        name,
        document ->
            document.withFronts(document.fronts().withWishes(wish.of(document.fronts().wishes()))));
  }

  /** A free name for a marked front. */
  public static String nextId(Document document) {
    return NextId.numbered("f", MARKED.ids(document.fronts().marked()));
  }

  /** A front that can be saved: no negative zeros, no blank note. */
  private static MarkedFront plain(MarkedFront from) throws InputException {
    Optional<String> note = from.note().filter(text -> !text.isBlank());
    Optional<String> fault = note.flatMap(NameRules::faultOfName);
    if (fault.isPresent()) {
      throw Refusal.of("the note", "bad-note", "it " + fault.get(), "Write a shorter, plain note");
    }
    return new MarkedFront(
        from.id(), from.azimuth() + 0.0, from.planting().map(PlainPlan::of), note, from.extras());
  }

  /** Marks a front, at the end of the list. */
  public static Edit mark(MarkedFront front) {
    return marked("Mark front " + front.id(), all -> MARKED.add(all, plain(front)));
  }

  /** Puts another front, name or note in the place of one. */
  public static Edit change(String id, MarkedFront front) {
    return marked("Change marked front " + id, all -> MARKED.replace(all, id, plain(front)));
  }

  /** Writes a note to a marked front; a blank one takes the note away. */
  public static Edit note(String id, String note) {
    return marked(
        "Write a note to front " + id,
        all -> {
          MarkedFront old = MARKED.get(all, id);
          MarkedFront noted =
              new MarkedFront(id, old.azimuth(), old.planting(), Optional.of(note), old.extras());
          MARKED.replace(all, id, plain(noted));
        });
  }

  /** Takes the mark of a front away. */
  public static Edit remove(String id) {
    return marked("Remove marked front " + id, all -> MARKED.remove(all, id));
  }

  /** Says which style the tree is to have; empty for not said. */
  public static Edit style(Optional<TreeStyle> style) {
    return wish(
        "Set the style",
        old ->
            new FrontWishes(
                style, old.eyeHeight(), old.eyeDistance(), old.weights(), old.extras()));
  }

  /** Says how high above the soil line the eye is; empty for not said [m]. */
  public static Edit eyeHeight(OptionalDouble height) {
    return wish(
        "Set the height of the eye",
        old ->
            new FrontWishes(
                old.style(),
                height.isPresent()
                    ? OptionalDouble.of(
                        Refusal.coordinate("the eye", "its height", height.getAsDouble()))
                    : height,
                old.eyeDistance(),
                old.weights(),
                old.extras()));
  }

  /** Says how far from the trunk the eye is; empty for not said [m]. */
  public static Edit eyeDistance(OptionalDouble distance) {
    return wish(
        "Set the distance of the eye",
        old -> {
          if (distance.isPresent()) {
            Refusal.size("the eye", "its distance", distance.getAsDouble());
          }
          return new FrontWishes(
              old.style(), old.eyeHeight(), distance, old.weights(), old.extras());
        });
  }

  /** Says how much a measure counts; empty for as much as the style says [1]. */
  public static Edit weight(FrontMeasure measure, OptionalDouble weight) {
    return wish(
        "Set what counts in a front",
        old -> {
          Map<FrontMeasure, Double> all = new EnumMap<>(FrontMeasure.class);
          all.putAll(old.weights());
          all.remove(measure);
          if (weight.isPresent()) {
            all.put(measure, checked(weight.getAsDouble()));
          }
          return new FrontWishes(
              old.style(), old.eyeHeight(), old.eyeDistance(), all, old.extras());
        });
  }

  /** Lets everything count as the style says. */
  public static Edit weightsOfStyle() {
    return wish(
        "Let the style say what counts",
        old ->
            new FrontWishes(
                old.style(), old.eyeHeight(), old.eyeDistance(), Map.of(), old.extras()));
  }

  private static double checked(double weight) throws InputException {
    if (!(weight >= 0 && weight <= LARGEST_WEIGHT)) {
      throw Refusal.of(
          "the weight",
          "out-of-range",
          "it is " + Amount.number(weight) + ", a number from 0 to 1000 is expected",
          "Give 0 for what does not count, 1 for what counts as usual, more for what counts more");
    }
    return weight + 0.0;
  }
}
