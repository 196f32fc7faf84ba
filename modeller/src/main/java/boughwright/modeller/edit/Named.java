// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.NameRules;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A sort of things that go by a name, each by another.
 *
 * @param what what one is called
 * @param naming its name
 */
record Named<T>(String what, Function<T, String> naming) {

  /** The names of things. */
  List<String> ids(List<T> all) {
    return all.stream().map(naming).toList();
  }

  /** The place of a thing in a list. */
  int at(List<T> all, String id) throws InputException {
    List<String> ids = ids(all);
    int at = ids.indexOf(id);
    if (at < 0) {
      throw Refusal.unknown(what, id, ids);
    }
    return at;
  }

  T get(List<T> all, String id) throws InputException {
    return all.get(at(all, id));
  }

  /** Adds a thing, whose name must be free, at the end. */
  void add(List<T> all, T one) throws InputException {
    requireFree(what, naming.apply(one), ids(all));
    all.add(one);
  }

  /** Puts another thing in the place of one; it may have another name that is free. */
  void replace(List<T> all, String id, T other) throws InputException {
    int at = at(all, id);
    String name = naming.apply(other);
    if (!name.equals(id)) {
      requireFree(what, name, ids(all));
    }
    all.set(at, other);
  }

  void remove(List<T> all, String id) throws InputException {
    all.remove(at(all, id));
  }

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
}
