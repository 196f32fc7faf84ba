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
  private static final Named<GuyLine> LINES = new Named<>("guy-line", GuyLine::id);
  private static final Named<HandBend> HANDS = new Named<>("pull by hand", HandBend::id);
  private static final Placed COILS = new Placed("coil");
  private static final Placed WEIGHTS = new Placed("weight");
  private static final Placed AIDS = new Placed("aid");

  private BendEdits() {}

  private record Numbered<T>(int at, T value) {}

  private static <T> Edit replace(
      Placed sort, Where where, Function<ProposalDraft, List<T>> list, Numbered<T> other) {
    return edit(
        "Change " + sort.what() + " " + (other.at() + 1) + " of " + where,
        where,
        draft -> sort.replace(list.apply(draft), other.at(), other.value()));
  }

  private static Edit remove(
      Placed sort, Where where, Function<ProposalDraft, List<?>> list, int at) {
    return edit(
        "Delete " + sort.what() + " " + (at + 1) + " of " + where,
        where,
        draft -> sort.remove(list.apply(draft), at));
  }

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
        draft -> LINES.replace(draft.lines, id, line));
  }

  /** Takes a guy-line out. */
  public static Edit deleteLine(Where where, String id) {
    return edit(
        "Delete guy-line " + id + " of " + where, where, draft -> LINES.remove(draft.lines, id));
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
        draft -> HANDS.replace(draft.hands, id, hand));
  }

  /** Takes a pull by hand out. */
  public static Edit deleteHandBend(Where where, String id) {
    return edit(
        "Delete pull by hand " + id + " of " + where,
        where,
        draft -> HANDS.remove(draft.hands, id));
  }

  /** Adds a coil. */
  public static Edit addCoil(Where where, Coil coil) {
    return edit("Add a coil to " + where, where, draft -> draft.coils.add(coil));
  }

  /** Puts another coil in the place of one. */
  public static Edit changeCoil(Where where, int at, Coil coil) {
    return replace(COILS, where, draft -> draft.coils, new Numbered<>(at, coil));
  }

  /** Takes a coil out. */
  public static Edit deleteCoil(Where where, int at) {
    return remove(COILS, where, draft -> draft.coils, at);
  }

  /** Adds a weight. */
  public static Edit addWeight(Where where, HungWeight weight) {
    return edit("Add a weight to " + where, where, draft -> draft.weights.add(weight));
  }

  /** Puts another weight in the place of one. */
  public static Edit changeWeight(Where where, int at, HungWeight weight) {
    return replace(WEIGHTS, where, draft -> draft.weights, new Numbered<>(at, weight));
  }

  /** Takes a weight out. */
  public static Edit deleteWeight(Where where, int at) {
    return remove(WEIGHTS, where, draft -> draft.weights, at);
  }

  /** Adds an aid. */
  public static Edit addAid(Where where, Aid aid) {
    return edit("Add an aid to " + where, where, draft -> draft.aids.add(aid));
  }

  /** Puts another aid in the place of one. */
  public static Edit changeAid(Where where, int at, Aid aid) {
    return replace(AIDS, where, draft -> draft.aids, new Numbered<>(at, aid));
  }

  /** Takes an aid out. */
  public static Edit deleteAid(Where where, int at) {
    return remove(AIDS, where, draft -> draft.aids, at);
  }
}
