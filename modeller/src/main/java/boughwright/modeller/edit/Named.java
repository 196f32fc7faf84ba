// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.NameRules;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Lists of things that go by a name. */
final class Named {
  private Named() {}

  /**
   * Another thing in the place of one.
   *
   * @param id name of the one
   * @param other the other, which may be called otherwise
   */
  record Swap<T>(String id, T other) {}

  static void requireFree(String what, String id, Collection<String> taken) throws InputException {
    Optional<String> fault = NameRules.faultOfId(id);
    if (fault.isPresent()) {
      throw Refusal.of(what, "bad-id", "the name " + fault.get(), "Give a short name");
    }
    if (taken.contains(id)) {
      throw Refusal.of(
          what + " " + Refusal.quoted(id),
          "duplicate-id",
          "another " + what + " is called " + Refusal.quoted(id),
          "Give a name that is free, such as " + NextId.free(id, taken));
    }
  }

  /** The place of a thing in a list. */
  static <T> int at(String what, List<T> all, Function<T, String> naming, String id)
      throws InputException {
    List<String> ids = all.stream().map(naming).toList();
    int at = ids.indexOf(id);
    if (at < 0) {
      throw Refusal.unknown(what, id, ids);
    }
    return at;
  }

  static <T> void replace(String what, List<T> all, Function<T, String> naming, Swap<T> swap)
      throws InputException {
    int at = at(what, all, naming, swap.id());
    String name = naming.apply(swap.other());
    if (!name.equals(swap.id())) {
      requireFree(what, name, all.stream().map(naming).toList());
    }
    all.set(at, swap.other());
  }

  /** Refuses a place that a list does not have; places are counted from 1 for people. */
  static <T> void requireIn(String what, List<T> all, int at) throws InputException {
    if (at < 0 || at >= all.size()) {
      throw Refusal.of(
          what,
          "unknown-" + what.replace(' ', '-'),
          "there is no " + what + " number " + (at + 1),
          "Choose one that is there");
    }
  }
}
