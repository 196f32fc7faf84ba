// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Strand;
import boughwright.modeller.plan.Tightener;
import boughwright.physics.hold.LineStrength;
import boughwright.physics.hold.StrandTwist;
import boughwright.physics.trial.HardwareFinding.Topic;
import boughwright.physics.trial.LineHardware.Turns;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Whether the strand of a line bears its pull, and how it is tightened. */
final class StrandCheck {
  /** Part of the strain at break that the winding of a strand may use up [1]. Assumption. */
  private static final double OF_ELONGATION = 0.5;

  private final LineAtWork at;
  private final Optional<Strand> strand;
  private final Optional<Tightener> tightener;

  StrandCheck(LineAtWork at) {
    this.at = at;
    strand = at.line().tackle().strand();
    tightener = at.line().tackle().tightener();
  }

  /** Angle between strands and pull when the line is as short as in the trial [rad]. */
  private double lay() {
    return twist().map(twist -> twist.lay(twist.turns(span()))).orElse(0.0);
  }

  /** Length the line has without its stretch, in the bent pose [m]. */
  private double span() {
    return at.trial().length() - at.stretch();
  }

  private Optional<StrandTwist> twist() {
    if (tightener.orElse(null) instanceof Tightener.Twist twist && strand.isPresent()) {
      return Optional.of(
          StrandTwist.spanning(at.gap(), strand.get().gauge(), twist.turnsIn(), twist.inMiddle()));
    }
    return Optional.empty();
  }

  OptionalDouble safeLoad() {
    return strand
        .map(s -> OptionalDouble.of(LineStrength.safe(s, lay())))
        .orElse(OptionalDouble.empty());
  }

  OptionalDouble breakingLoad() {
    return strand
        .map(s -> OptionalDouble.of(LineStrength.breaking(s, lay())))
        .orElse(OptionalDouble.empty());
  }

  Optional<Turns> turns() {
    if (tightener.orElse(null) instanceof Tightener.Turnbuckle buckle) {
      double toAdd = (at.gap() - span()) / buckle.perTurn();
      return Optional.of(new Turns(buckle.turnsIn(), toAdd, OptionalDouble.empty()));
    }
    return twist()
        .map(
            twist -> {
              double in = tightener.orElseThrow().turnsIn();
              double all = twist.turns(span());
              return new Turns(in, all - in, OptionalDouble.of(mostTurns(twist) - all));
            });
  }

  private double mostTurns(StrandTwist twist) {
    double bears = OF_ELONGATION * LineStrength.elongation(strand.orElseThrow().material());
    boolean wire = strand.orElseThrow().material().isWire();
    return wire
        ? Math.min(twist.turnsTouching(), twist.turnsStraining(bears))
        : twist.turnsTouching();
  }

  List<HardwareFinding> findings() {
    List<HardwareFinding> out = new ArrayList<>();
    out.add(strand.map(this::bears).orElseGet(this::unknown));
    out.add(tightening());
    return out;
  }

  private HardwareFinding bears(Strand s) {
    double safe = LineStrength.safe(s, lay());
    String what =
        String.format(
            Locale.ROOT,
            "%s bears %.0f N safely and breaks at about %.0f N, ends and knots counted; it pulls"
                + " %.0f N",
            words(s),
            safe,
            LineStrength.breaking(s, lay()),
            at.pull());
    if (at.pull() > safe) {
      return HardwareFinding.no(Topic.STRAND, what + ". " + stronger());
    }
    if (at.pull() > LineStrength.yielding(s, lay())) {
      return HardwareFinding.look(
          Topic.STRAND,
          what
              + ", and stays longer from about "
              + newtons(LineStrength.yielding(s, lay()))
              + " on: tighten it again after a day. "
              + stronger());
    }
    String stretch =
        String.format(Locale.ROOT, "; it is %.1f mm longer for that.", 1e3 * at.stretch());
    return HardwareFinding.fine(Topic.STRAND, what + stretch);
  }

  private HardwareFinding unknown() {
    return HardwareFinding.look(
        Topic.STRAND,
        "Nothing says what the line is made of; it pulls "
            + newtons(at.pull())
            + ". "
            + stronger());
  }

  private String stronger() {
    List<String> enough =
        Stream.of(Material.STAINLESS, Material.CORD)
            .flatMap(material -> LineStrength.thinnest(material, 2, straightPull()).stream())
            .map(StrandCheck::words)
            .toList();
    return enough.isEmpty()
        ? "No sold line bears that: pull in stages, or with two lines."
        : "Enough for it: " + String.join(", or ", enough) + ".";
  }

  /** The pull that would load straight strands as this one loads twisted ones [N]. */
  private double straightPull() {
    return strand
        .map(s -> at.pull() * LineStrength.safe(s, 0) / LineStrength.safe(s, lay()))
        .orElse(at.pull());
  }

  private HardwareFinding tightening() {
    double shorter = 1e3 * (at.gap() - span());
    Optional<Turns> turns = turns();
    if (turns.isEmpty()) {
      boolean twisted = tightener.orElse(null) instanceof Tightener.Twist;
      String how =
          String.format(Locale.ROOT, "From pad to anchor it comes %.1f mm shorter", shorter);
      return twisted
          ? HardwareFinding.look(
              Topic.TIGHTENING, how + "; the turns hang on the gauge of the strand: give it.")
          : HardwareFinding.fine(Topic.TIGHTENING, how + ".");
    }
    double toAdd = turns.get().toAdd();
    String add =
        String.format(
            Locale.ROOT,
            "%s %.1f turns, %.1f mm shorter than as it was tied with %.1f turns in",
            toAdd < 0 ? "Take out" : "Put in",
            Math.abs(toAdd),
            shorter,
            turns.get().in());
    if (turns.get().left().isEmpty()) {
      return HardwareFinding.fine(
          Topic.TIGHTENING, add + "; see that so much thread is left before you begin.");
    }
    double left = turns.get().left().getAsDouble();
    return left < 0
        ? HardwareFinding.no(Topic.TIGHTENING, add + ": " + tooFar())
        : HardwareFinding.fine(
            Topic.TIGHTENING,
            add
                + String.format(
                    Locale.ROOT,
                    "; then %.1f turns are left before %s.",
                    left,
                    strand.orElseThrow().material().isWire()
                        ? "the strands jam or tear"
                        : "the strands jam"));
  }

  private String tooFar() {
    StrandTwist twist = twist().orElseThrow();
    double most = mostTurns(twist);
    return String.format(
        Locale.ROOT,
        "%s at %.1f turns, and by then it is only %.1f mm shorter. Tie it shorter first, or use a"
            + " turnbuckle.",
        strand.orElseThrow().material().isWire()
            ? "its strands jam or begin to tear"
            : "its strands jam",
        most,
        1e3 * (at.gap() - twist.span(most)));
  }

  private static String words(Strand s) {
    String count = s.count() == 1 ? "" : s.count() + " × ";
    String kind =
        switch (s.material()) {
          case COPPER_ANNEALED -> "annealed copper wire";
          case ALUMINIUM -> "aluminium wire";
          case STEEL_SOFT -> "soft steel wire";
          case STAINLESS -> "stainless wire";
          case CORD -> "polyester cord";
        };
    return String.format(Locale.ROOT, "%s of %s%.1f mm", kind, count, 1e3 * s.gauge());
  }

  private static String newtons(double force) {
    return String.format(Locale.ROOT, "%.0f N", force);
  }
}
