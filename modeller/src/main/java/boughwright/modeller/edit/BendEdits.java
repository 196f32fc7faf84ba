// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static boughwright.modeller.edit.ProposalEdits.edit;

import boughwright.modeller.edit.ProposalEdits.Where;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.HungWeight;
import java.util.List;
import java.util.function.Function;

/**
 * Changes of what bends and holds a branch in a proposal. Guy-lines and pulls by hand go by their
 * names; coils, weights and aids by their place in the list, from 0.
 */
public final class BendEdits {
  private BendEdits() {}

  private static <T> Edit replace(
      String what, Where where, Function<ProposalDraft, List<T>> list, Numbered<T> other) {
    return edit(
        "Change " + what + " " + (other.at() + 1) + " of " + where,
        where,
        draft -> {
          Named.requireIn(what, list.apply(draft), other.at());
          list.apply(draft).set(other.at(), other.value());
        });
  }

  private static <T> Edit remove(
      String what, Where where, Function<ProposalDraft, List<T>> list, int at) {
    return edit(
        "Delete " + what + " " + (at + 1) + " of " + where,
        where,
        draft -> {
          Named.requireIn(what, list.apply(draft), at);
          list.apply(draft).remove(at);
        });
  }

  private record Numbered<T>(int at, T value) {}

  /** Adds a guy-line. */
  public static Edit addLine(Where where, GuyLine line) {
    return edit(
        "Add guy-line " + line.id() + " to " + where, where, draft -> draft.lines.add(line));
  }

  /** Puts another guy-line in the place of one. */
  public static Edit changeLine(Where where, String id, GuyLine line) {
    return edit(
        "Change guy-line " + id + " of " + where,
        where,
        draft -> Named.replace("guy-line", draft.lines, GuyLine::id, new Named.Swap<>(id, line)));
  }

  /** Takes a guy-line out. */
  public static Edit deleteLine(Where where, String id) {
    return edit(
        "Delete guy-line " + id + " of " + where,
        where,
        draft -> draft.lines.remove(Named.at("guy-line", draft.lines, GuyLine::id, id)));
  }

  /** Adds a pull by hand. */
  public static Edit addHandBend(Where where, HandBend hand) {
    return edit(
        "Add pull by hand " + hand.id() + " to " + where, where, draft -> draft.hands.add(hand));
  }

  /** Puts another pull by hand in the place of one. */
  public static Edit changeHandBend(Where where, String id, HandBend hand) {
    return edit(
        "Change pull by hand " + id + " of " + where,
        where,
        draft ->
            Named.replace("pull by hand", draft.hands, HandBend::id, new Named.Swap<>(id, hand)));
  }

  /** Takes a pull by hand out. */
  public static Edit deleteHandBend(Where where, String id) {
    return edit(
        "Delete pull by hand " + id + " of " + where,
        where,
        draft -> draft.hands.remove(Named.at("pull by hand", draft.hands, HandBend::id, id)));
  }

  /** Adds a coil. */
  public static Edit addCoil(Where where, Coil coil) {
    return edit("Add a coil to " + where, where, draft -> draft.coils.add(coil));
  }

  /** Puts another coil in the place of one. */
  public static Edit changeCoil(Where where, int at, Coil coil) {
    return replace("coil", where, draft -> draft.coils, new Numbered<>(at, coil));
  }

  /** Takes a coil out. */
  public static Edit deleteCoil(Where where, int at) {
    return remove("coil", where, draft -> draft.coils, at);
  }

  /** Adds a weight. */
  public static Edit addWeight(Where where, HungWeight weight) {
    return edit("Add a weight to " + where, where, draft -> draft.weights.add(weight));
  }

  /** Puts another weight in the place of one. */
  public static Edit changeWeight(Where where, int at, HungWeight weight) {
    return replace("weight", where, draft -> draft.weights, new Numbered<>(at, weight));
  }

  /** Takes a weight out. */
  public static Edit deleteWeight(Where where, int at) {
    return remove("weight", where, draft -> draft.weights, at);
  }

  /** Adds an aid. */
  public static Edit addAid(Where where, Aid aid) {
    return edit("Add an aid to " + where, where, draft -> draft.aids.add(aid));
  }

  /** Puts another aid in the place of one. */
  public static Edit changeAid(Where where, int at, Aid aid) {
    return replace("aid", where, draft -> draft.aids, new Numbered<>(at, aid));
  }

  /** Takes an aid out. */
  public static Edit deleteAid(Where where, int at) {
    return remove("aid", where, draft -> draft.aids, at);
  }
}
