// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.physics.reach.Reason;
import boughwright.physics.reach.Unreachable;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Why no bend brings a leader nearer.
 *
 * @param why what was found, and the nearest thing that works
 * @param refused pairs of a place and an anchor that are no choice, by reason
 */
public record NoBend(Unreachable why, Map<Reason, Integer> refused) {
  /** Between places where no line can be tied at all, whatever it would do. */
  private static final Set<Reason> UNTIED =
      EnumSet.of(Reason.NOT_STIFF, Reason.TOO_SHORT, Reason.TOO_LONG, Reason.BLOCKED);

  public NoBend {
    Objects.requireNonNull(why, "why");
    refused = Map.copyOf(refused);
  }

  /**
   * A reason, and whether it holds for more than half.
   *
   * @param reason the reason
   * @param most whether for more than half of the lines it is one of
   */
  public record Main(Reason reason, boolean most) {}

  /**
   * The most frequent reason among lines that could be tied; where there are none, among those that
   * could not; empty where nothing was there to tie to.
   */
  public Optional<Main> mainly() {
    return mainly(false).or(() -> mainly(true));
  }

  private Optional<Main> mainly(boolean untied) {
    int all = 0;
    int most = 0;
    Reason main = null;
    for (Reason reason : Reason.values()) {
      int count = refused.getOrDefault(reason, 0);
      if (UNTIED.contains(reason) == untied) {
        all += count;
        if (count > most) {
          most = count;
          main = reason;
        }
      }
    }
    return main == null ? Optional.empty() : Optional.of(new Main(main, 2 * most > all));
  }
}
