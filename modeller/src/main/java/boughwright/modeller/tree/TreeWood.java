// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** The wood a whole tree is made of. */
public sealed interface TreeWood {

  /**
   * A wood of the species table.
   *
   * @param key what the file says: a key, botanical name or common name of the table, or a name the
   *     table does not know
   */
  record OfSpecies(String key) implements TreeWood {
    public OfSpecies {
      Objects.requireNonNull(key, "key");
    }
  }

  /**
   * Wood of one's own, whose modulus is used as it is.
   *
   * @param name what to call it
   * @param moe true modulus of elasticity [Pa]
   * @param shearModulus modulus of rigidity G [Pa]; empty for moe / 16
   * @param response how it answers strain; empty for the default, fibre
   * @param source where the values come from, in the person's words
   * @param extras fields of the file that this version does not know
   */
  record Own(
      String name,
      double moe,
      OptionalDouble shearModulus,
      Optional<Response> response,
      Optional<String> source,
      Map<String, Object> extras)
      implements TreeWood {
    public Own {
      Objects.requireNonNull(name, "name");
      if (!(moe > 0) || Double.isInfinite(moe)) {
        throw new IllegalArgumentException("moe is " + moe + " Pa, a positive number is expected");
      }
      Objects.requireNonNull(source, "source");
      extras = Extras.copyOf(extras);
    }

    /** Wood of one's own without words on its source. */
    public Own(
        String name,
        double moe,
        OptionalDouble shearModulus,
        Optional<Response> response,
        Map<String, Object> extras) {
      this(name, moe, shearModulus, response, Optional.empty(), extras);
    }
  }
}
