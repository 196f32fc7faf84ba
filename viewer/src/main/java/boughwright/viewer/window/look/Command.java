// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.KeyStroke;

/**
 * Something a person can do by menu, key or button.
 *
 * @param id name for tests and settings, such as {@code view.front}
 * @param name words on the menu
 * @param mnemonic letter of the name that is underlined
 * @param key key that does it anywhere in the window; empty for none
 * @param tip what it does, in a sentence
 * @param run does it
 * @param enabled whether it can be done now
 */
public record Command(
    String id,
    String name,
    char mnemonic,
    Optional<KeyStroke> key,
    String tip,
    Runnable run,
    BooleanSupplier enabled) {
  public Command {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(tip, "tip");
    Objects.requireNonNull(run, "run");
    Objects.requireNonNull(enabled, "enabled");
    if (name.toLowerCase(java.util.Locale.ROOT).indexOf(Character.toLowerCase(mnemonic)) < 0) {
      throw new IllegalArgumentException("\"" + name + "\" has no letter " + mnemonic);
    }
  }
}
