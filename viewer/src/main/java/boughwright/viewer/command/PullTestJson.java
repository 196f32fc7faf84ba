// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.modeller.tree.PullTest;
import boughwright.physics.trial.FailureRisk;
import boughwright.physics.trial.MoeBelief;
import boughwright.physics.trial.PullAnswer;
import boughwright.physics.trial.PullNote;
import boughwright.physics.trial.PullStrain;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.TrialResult;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;

/** What a pull test told, for programs: millimetres, newtons, gigapascals. */
final class PullTestJson {
  private PullTestJson() {}

  static String of(PullTestAnswer answer, Optional<Path> written) {
    PullAnswer pull = answer.pull();
    ObjectNode node = JsonAnswer.object();
    node.set("test", test(pull.test()));
    node.set("limb", JsonAnswer.words(pull.limb()));
    node.set("tests", JsonAnswer.words(pull.tests().stream().map(PullTest::id).toList()));
    node.set("before", moe(pull.before()));
    node.set("after", moe(pull.after()));
    node.putObject("force_spread")
        .put("before", number(pull.force().before()))
        .put("after", number(pull.force().after()));
    node.set("fit", fit(pull));
    node.set("strain", strain(pull.strain()));
    node.set("notes", JsonAnswer.list(pull.notes(), PullTestJson::note));
    node.set("plans", JsonAnswer.list(answer.plans(), PullTestJson::plan));
    node.put("source", pull.result().source());
    node.put("written", written.isPresent());
    written.ifPresent(path -> node.put("file", path.toString()));
    return JsonAnswer.text(node);
  }

  private static ObjectNode test(PullTest test) {
    ObjectNode node = JsonAnswer.object();
    node.put("id", test.id());
    node.put("segment", test.segment());
    node.put("along", number(test.along()));
    node.set("direction", JsonAnswer.direction(test.direction()));
    test.doneOn().ifPresent(day -> node.put("done_on", day.toString()));
    ArrayNode readings = node.putArray("readings");
    for (PullTest.Reading read : test.readings()) {
      readings
          .addObject()
          .put("force_N", number(read.force()))
          .put("moved_mm", number(1000 * read.moved()))
          .put("base_moved_mm", number(1000 * read.baseMoved()));
    }
    return node;
  }

  private static ObjectNode moe(MoeBelief belief) {
    Range range = belief.range();
    ObjectNode node = JsonAnswer.object();
    node.put("moe_GPa", number(belief.median() / 1e9));
    node.put("low_GPa", number(range.low() / 1e9));
    node.put("high_GPa", number(range.high() / 1e9));
    node.put("moe_cv", number(belief.variation()));
    return node;
  }

  private static ObjectNode fit(PullAnswer pull) {
    PullAnswer.Fit fit = pull.fit();
    ObjectNode node = JsonAnswer.object();
    node.put("moved_over_expected", number(Math.exp(fit.lnOverExpected())));
    node.put("deviations_from_expected", number(fit.expected().deviations()));
    fit.others()
        .ifPresent(
            others -> {
              node.put("softer_than_other_tests", number(Math.exp(others.lnSofter())));
              node.put("deviations_from_other_tests", number(others.deviations()));
            });
    if (pull.test().readings().size() > 1) {
      node.put("deviations_of_second_load", number(fit.loadsApart()));
    }
    return node;
  }

  private static ObjectNode strain(PullStrain strain) {
    ObjectNode node = JsonAnswer.object();
    node.set("peak", TrialJson.peak(strain.peak()));
    strain
        .gentle()
        .ifPresent(
            most -> {
              node.put("yield_strain", number(strain.yieldStrain()));
              node.put("springy_up_to_N", number(most));
            });
    return node;
  }

  private static ObjectNode note(PullNote note) {
    ObjectNode node = JsonAnswer.object();
    node.put("kind", note.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    node.put("questioned", note.isQuestion());
    node.put("found", note.words());
    node.put("remedy", note.remedy());
    return node;
  }

  private static ObjectNode plan(PullTestAnswer.Change change) {
    ObjectNode node = JsonAnswer.object();
    node.put("plan", change.after().plan());
    node.set("before", trial(change.before()));
    node.set("after", trial(change.after()));
    return node;
  }

  private static ObjectNode trial(TrialResult trial) {
    ObjectNode node = JsonAnswer.object();
    node.put("converged", trial.outcome().converged());
    node.put("stable", trial.outcome().stable());
    trial.risk().ifPresent(risk -> risk(node, risk));
    return node;
  }

  private static void risk(ObjectNode node, Risk risk) {
    ObjectNode tensions = node.putObject("tensions_N");
    new TreeMap<>(risk.tensions())
        .forEach(
            (line, range) ->
                tensions
                    .putArray(line)
                    .add(number(range.low()))
                    .add(number(range.middle()))
                    .add(number(range.high())));
    ObjectNode failures = node.putObject("risk");
    for (FailureRisk failure : risk.failures()) {
      failures.set(
          failure.mode().name().toLowerCase(Locale.ROOT), RiskJson.odds(failure.probability()));
    }
  }
}
