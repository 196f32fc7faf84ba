// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.HardwareFinding.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Puts together what is said of the tackle of a trial, line by line. */
final class HardwareCheck {
  private final TrialRequest request;
  private final TrialResult result;
  private final Skeleton skeleton;

  HardwareCheck(TrialRequest request, TrialResult result) {
    this.request = request;
    this.result = result;
    skeleton = new Skeleton(request.tree());
  }

  Hardware hardware() {
    List<LineAtWork> lines = new ArrayList<>();
    List<GuyLine> planned =
        request.proposals().stream().flatMap(proposal -> proposal.guyLines().stream()).toList();
    for (LineTrial trial : result.lines()) {
      planned.stream()
          .filter(line -> line.id().equals(trial.id()))
          .findFirst()
          .ifPresent(line -> lines.add(LineAtWork.of(line, trial, skeleton, result)));
    }
    List<LineAtWork> taut = lines.stream().filter(at -> !at.trial().slack()).toList();
    List<HardwareFinding> standing =
        result.outcome().holds()
            ? new StandCheck(request, result, taut, skeleton).findings()
            : List.of();
    return new Hardware(lines.stream().map(this::line).toList(), standing);
  }

  private LineHardware line(LineAtWork at) {
    StrandCheck strand = new StrandCheck(at);
    PadCheck pad = new PadCheck(at, request.species().compressionPerp());
    return new LineHardware(
        at.line().id(),
        at.pull(),
        strand.safeLoad(),
        strand.breakingLoad(),
        at.stretch(),
        strand.turns(),
        pad.pressure(),
        pad.lengthNeeded(),
        pad.offSquare(),
        at.trial().slack() ? List.of(slack(at)) : findings(at, strand, pad));
  }

  private static List<HardwareFinding> findings(LineAtWork at, StrandCheck strand, PadCheck pad) {
    List<HardwareFinding> out = new ArrayList<>(strand.findings());
    out.addAll(pad.findings());
    out.add(new AnchorCheck(at).finding());
    return out;
  }

  private static HardwareFinding slack(LineAtWork at) {
    return HardwareFinding.look(
        Topic.TIGHTENING,
        String.format(
            Locale.ROOT,
            "It hangs loose and pulls nothing: its points are %.1f mm apart. Below that length it"
                + " pulls.",
            1e3 * at.trial().length()));
  }
}
