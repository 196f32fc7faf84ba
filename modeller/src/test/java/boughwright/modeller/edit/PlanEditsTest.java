// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.ProposalEdits.Where;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.Backdrop;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PlanEditsTest {
  private static final Where WHERE = new Where("a", "p1");

  /** An upright trunk, a level branch to the right, a plan with one empty proposal. */
  private static Document document() throws InputException {
    Document trunk = NewTree.document("Invented", "carpinus-betulus");
    Document tree =
        SegmentEdits.add(
                new NewSegment(
                    "b1",
                    new NewSegment.Place("t1", 0.5, Joint.UNION),
                    Kind.BRANCH,
                    new Run.Heading(Math.toRadians(270), 0, 0.2),
                    0.01,
                    0.008))
            .of(trunk);
    Document planned = PlanEdits.add(new PlanDraft("a").build()).of(tree);
    return ProposalEdits.add("a", ProposalEdits.empty("p1", Optional.of("b1"))).of(planned);
  }

  private static GuyLine line(String id, double along, Point3 anchor) {
    return new GuyLine(
        id,
        new Spot("b1", along),
        OptionalDouble.empty(),
        new Anchor.Fixed(anchor),
        new Hold.Tension(20),
        Map.of());
  }

  private static GuyLine line(String id) {
    return line(id, 0.9, new Point3(0.2, 0, -0.1));
  }

  private static Proposal proposal(Document document) {
    return document.plans().get(0).proposals().get(0);
  }

  private static Problem refusal(Edit edit, Document document) {
    try {
      edit.of(document);
      throw new AssertionError(edit.name() + " was made");
    } catch (InputException e) {
      return e.problems().get(0);
    }
  }

  private static Document after(Document document, Edit... edits) throws InputException {
    Document now = document;
    for (Edit edit : edits) {
      now = edit.of(now);
    }
    return now;
  }

  @Test
  void names_goOn() throws Exception {
    Document document = after(document(), BendEdits.addLine(WHERE, line("g1")));
    assertThat(PlanEdits.nextId(document)).isEqualTo("b");
    assertThat(ProposalEdits.nextId(document, "a")).isEqualTo("p2");
    assertThat(ProposalEdits.nextLineId(document, "a")).isEqualTo("g2");
    assertThat(ProposalEdits.nextHandId(document, "a")).isEqualTo("h1");
    assertThat(ProposalEdits.nextLineId(document, "nowhere")).isEqualTo("g1");
  }

  @Test
  void lines_areAddedChangedAndTakenOut() throws Exception {
    Document one = after(document(), BendEdits.addLine(WHERE, line("g1")));
    assertThat(proposal(one).guyLines()).containsExactly(line("g1"));
    GuyLine other = line("g9", 0.5, new Point3(0.1, 0.1, -0.1));
    Document changed = after(one, BendEdits.changeLine(WHERE, "g1", other));
    assertThat(proposal(changed).guyLines()).containsExactly(other);
    assertThat(after(changed, BendEdits.deleteLine(WHERE, "g9"))).isEqualTo(document());
  }

  @Test
  void coilsWeightsAndHands_areAddedChangedAndTakenOut() throws Exception {
    Coil coil =
        new Coil(
            new Spot("b1", 0.1),
            new Spot("b1", 0.9),
            Material.ALUMINIUM,
            0.003,
            1,
            0.9,
            Hand.LEFT,
            Map.of());
    HungWeight weight = new HungWeight(new Spot("b1", 1), 0.2, Map.of());
    HandBend hand = new HandBend("h1", new Spot("b1", 1), Direction3.ofAzimuth(0), 0.03, Map.of());
    Document full =
        after(
            document(),
            BendEdits.addCoil(WHERE, coil),
            BendEdits.addWeight(WHERE, weight),
            BendEdits.addHandBend(WHERE, hand));
    assertThat(proposal(full).coils()).containsExactly(coil);
    assertThat(proposal(full).hungWeights()).containsExactly(weight);
    assertThat(proposal(full).handBends()).hasSize(1);
    HungWeight heavy = new HungWeight(new Spot("b1", 0.5), 0.4, Map.of());
    assertThat(proposal(after(full, BendEdits.changeWeight(WHERE, 0, heavy))).hungWeights())
        .containsExactly(heavy);
    assertThat(
            after(
                full,
                BendEdits.deleteCoil(WHERE, 0),
                BendEdits.deleteWeight(WHERE, 0),
                BendEdits.deleteHandBend(WHERE, "h1")))
        .isEqualTo(document());
    assertThat(refusal(BendEdits.deleteCoil(WHERE, 3), full).kind()).isEqualTo("unknown-coil");
  }

  @Test
  void plan_isRefused_whenItDoesNotFitTheTree() throws Exception {
    Document lined = after(document(), BendEdits.addLine(WHERE, line("g1")));
    assertThat(refusal(BendEdits.addLine(WHERE, line("g1")), lined).kind())
        .isEqualTo("duplicate-id");
    assertThat(refusal(PlanEdits.addCut("a", new Spot("b1", 0.5)), lined).kind())
        .isEqualTo("cut-away");
    GuyLine inWood = line("g2", 0.9, new Point3(0.1, 0, 0.05));
    Problem problem = refusal(BendEdits.addLine(WHERE, inWood), lined);
    assertThat(problem.kind()).isEqualTo("anchor-in-wood");
    assertThat(problem.line()).contains("plan \"a\"").contains("g2");
    assertThat(refusal(PlanEdits.apex("a", Optional.of("x")), lined).kind())
        .isEqualTo("unknown-segment");
    assertThat(refusal(PlanEdits.delete("z"), lined).kind()).isEqualTo("unknown-plan");
    assertThat(refusal(PlanEdits.rename("a", ""), lined).kind()).isEqualTo("bad-id");
    assertThat(refusal(PlanEdits.duplicate("a", "a"), lined).kind()).isEqualTo("duplicate-id");
  }

  @Test
  void treeIsNotChanged_whenAPlanWouldNoLongerFitIt() throws Exception {
    Document lined = after(document(), BendEdits.addLine(WHERE, line("g1")));
    Edit ontoTheAnchor =
        SegmentEdits.moveEnd("b1", new Run.To(new Point3(0.24, 0, -0.13)), SegmentEdits.Carry.WITH);
    Problem problem = refusal(ontoTheAnchor, lined);
    assertThat(problem.line()).contains("plan \"a\"").contains("g1");
    assertThat(refusal(TreeEdits.bark(OptionalDouble.of(0.006)), lined).kind())
        .isEqualTo("no-wood");
  }

  @Test
  void plans_areDuplicatedRenamedAndTakenOut() throws Exception {
    Document two = after(document(), PlanEdits.duplicate("a", "b"), PlanEdits.rename("a", "c"));
    assertThat(two.plans()).extracting(Plan::id).containsExactly("c", "b");
    assertThat(two.plan("b").orElseThrow().proposals())
        .isEqualTo(two.plan("c").orElseThrow().proposals());
    assertThat(after(two, PlanEdits.delete("b"), PlanEdits.rename("c", "a"))).isEqualTo(document());
  }

  @Test
  void plan_isPutInThePlaceOfItsName_orAtTheEnd() throws Exception {
    Document two = after(document(), PlanEdits.duplicate("a", "b"));
    Plan other = new PlanDraft("a").apex(Optional.of("b1")).build();
    assertThat(after(two, PlanEdits.put(other)).plans())
        .containsExactly(other, two.plan("b").orElseThrow());
    Plan third = new PlanDraft("c").build();
    assertThat(after(two, PlanEdits.put(third)).plans())
        .containsExactly(two.plans().get(0), two.plans().get(1), third);
    Plan unfit = new PlanDraft("a").apex(Optional.of("x")).build();
    assertThat(refusal(PlanEdits.put(unfit), two).kind()).isEqualTo("unknown-segment");
    assertThat(refusal(PlanEdits.put(new PlanDraft("c*").build()), two).kind()).isEqualTo("bad-id");
  }

  @Test
  void proposalThatLosesEverything_goesWithItsBranch() throws Exception {
    Document lined = after(document(), BendEdits.addLine(WHERE, line("g1")));
    Edit edit = BranchEdits.delete(lined, "b1");
    assertThat(edit.name()).isEqualTo("Delete b1 and what hangs on it: 1 segment, 1 line");
    assertThat(edit.of(lined).plans().get(0).proposals()).isEmpty();
    assertThat(proposal(BranchEdits.delete(document(), "b1").of(document())).about()).isEmpty();
  }

  @Test
  void anchorsAndPhotos_areAddedChangedAndTakenOut() throws Exception {
    AnchorPoint rim = new AnchorPoint("rim", new Point3(0.1, 0, 0), AnchorKind.RIM, Map.of());
    AnchorPoint peg = new AnchorPoint("peg", new Point3(0.2, 0, 0), AnchorKind.PEG, Map.of());
    Document anchored =
        after(document(), TreeEdits.addAnchor(rim), TreeEdits.changeAnchor("rim", peg));
    assertThat(anchored.tree().setting().anchors()).containsExactly(peg);
    assertThat(refusal(TreeEdits.addAnchor(peg), anchored).kind()).isEqualTo("duplicate-id");
    assertThat(after(anchored, TreeEdits.deleteAnchor("peg"))).isEqualTo(document());
    Backdrop photo = new Backdrop("a.jpg", 0, OptionalDouble.empty(), 1, 2, 0.5, Map.of());
    Document seen = after(document(), BackdropEdits.add(photo));
    assertThat(seen.backdrops()).isEqualTo(List.of(photo));
    assertThat(after(seen, BackdropEdits.change(0, photo.named("b.jpg"))).backdrops().get(0))
        .isEqualTo(photo.named("b.jpg"));
    assertThat(after(seen, BackdropEdits.delete(0))).isEqualTo(document());
    assertThat(refusal(BackdropEdits.delete(1), seen).remedy()).isNotBlank();
  }
}
