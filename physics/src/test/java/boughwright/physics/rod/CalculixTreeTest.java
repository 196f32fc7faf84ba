// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A tree of uniform rods, invented, against CalculiX (general-purpose finite elements,
 * http://www.calculix.de; beam elements B31, large displacements). Runs where {@code ccx} is on the
 * path, and must run where BOUGHWRIGHT_REQUIRE_CCX is 1.
 *
 * <p>CalculiX expands beams of the test's square section, of the same bending stiffness as a round
 * one. Rods of several sections meet there in rigid knots, which stiffen a little; the tolerance
 * allows for that.
 */
class CalculixTreeTest {
  /** Of the movement. */
  private static final double MOVEMENT = 5e-3;

  private static final int ELEMENTS = 80;
  private static final double MOE = 6e9;
  private static final double POISSON = 0.25;

  /**
   * Torsion constant over second moment of a square: 0.1406 a^4 to a^4 / 12 (Roark, table 10.1).
   */
  private static final double SQUARE_TORSION = 0.1406 * 12;

  private static final double TORSION_RATIO = SQUARE_TORSION / 2 / (1 + POISSON);
  private static final Vector3 FORCE = new Vector3(0.6, 0.8, -2);

  private static final RodCase TREE =
      new RodCase(
          Rods.rootFrame(Math.toRadians(65), 0),
          List.of(
              RodCase.Limb.trunk(0.36, wood(0.0055), Vector3.ZERO),
              new RodCase.Limb(
                  0,
                  0.225,
                  Vector3.ZERO,
                  Rotation.ofVector(new Vector3(0.9, 0.5, 0)),
                  0.24,
                  wood(0.003),
                  Vector3.ZERO)),
          List.of(new RodCase.Pull(RodCase.Place.on(1, 0.24), FORCE)),
          List.of(),
          List.of());

  private static RodCase.Wood wood(double radius) {
    return RodCase.Wood.ofRatio(radius, radius, MOE, TORSION_RATIO);
  }

  @Test
  void uniformTree_movesAsInCalculix(@TempDir Path folder)
      throws IOException, InterruptedException {
    boolean required = "1".equals(System.getenv("BOUGHWRIGHT_REQUIRE_CCX"));
    Assumptions.assumeTrue(required || isInstalled(), "ccx is not on the path");
    Vector3 expected = movementInCalculix(folder);
    RodSolution solution = TREE.solve();
    assertThat(solution.status().holds()).isTrue();
    RodPose rest = RodSolver.solve(TREE.model(), RodLoads.NONE, RodOptions.DEFAULT).pose();
    Vector3 moved =
        TREE.section(solution.pose(), 1, 0.24)
            .position()
            .minus(TREE.section(rest, 1, 0.24).position());
    assertThat(moved.norm()).isGreaterThan(0.1 * 0.24);
    Measured measured = new Measured(CalculixTreeTest.class);
    measured.check("of the movement", moved.minus(expected).norm() / expected.norm(), MOVEMENT);
    measured.report();
  }

  private static boolean isInstalled() {
    for (String folder : System.getenv("PATH").split(File.pathSeparator)) {
      if (Files.isExecutable(Path.of(folder, "ccx"))) {
        return true;
      }
    }
    return false;
  }

  private static Vector3 movementInCalculix(Path folder) throws IOException, InterruptedException {
    Files.writeString(folder.resolve("tree.inp"), deck());
    Process process =
        new ProcessBuilder("ccx", "tree")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("out.txt").toFile())
            .start();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).isZero();
    List<String> lines = Files.readAllLines(folder.resolve("tree.dat"));
    lines.removeIf(String::isBlank);
    String[] last = lines.get(lines.size() - 1).trim().split("\\s+");
    assertThat(last).hasSize(4);
    return new Vector3(
        Double.parseDouble(last[1]), Double.parseDouble(last[2]), Double.parseDouble(last[3]));
  }

  private static String deck() {
    Rotation trunk = TREE.baseFrame();
    Rotation side = trunk.after(TREE.limbs().get(1).turn());
    List<String> deck = new ArrayList<>();
    deck.add("*NODE,NSET=NALL");
    int knot = ELEMENTS * 5 / 8 + 1;
    Point3 union = Point3.ORIGIN.plus(axis(trunk, 0.225));
    for (int i = 0; i <= ELEMENTS; i++) {
      deck.add(node(i + 1, Point3.ORIGIN.plus(axis(trunk, 0.36 * i / ELEMENTS))));
    }
    for (int i = 1; i <= ELEMENTS; i++) {
      deck.add(node(ELEMENTS + 1 + i, union.plus(axis(side, 0.24 * i / ELEMENTS))));
    }
    int tip = 2 * ELEMENTS + 1;
    for (int limb = 0; limb < 2; limb++) {
      deck.add("*ELEMENT,TYPE=B31,ELSET=S" + limb);
      for (int i = 1; i <= ELEMENTS; i++) {
        int end = limb * ELEMENTS + i + 1;
        int start = limb == 1 && i == 1 ? knot : end - 1;
        deck.add(limb * ELEMENTS + i + "," + start + "," + end);
      }
    }
    deck.addAll(List.of("*MATERIAL,NAME=M", "*ELASTIC", MOE + "," + POISSON));
    deck.addAll(section(0, 0.0055, trunk));
    deck.addAll(section(1, 0.003, side));
    deck.addAll(List.of("*BOUNDARY", "1,1,6", "*STEP,NLGEOM,INC=1000", "*STATIC"));
    deck.addAll(List.of("0.2,1.,1e-6,1.", "*CLOAD"));
    deck.addAll(List.of(tip + ",1," + FORCE.x(), tip + ",2," + FORCE.y()));
    deck.addAll(List.of(tip + ",3," + FORCE.z(), "*NSET,NSET=TIP", tip + ","));
    deck.addAll(List.of("*NODE PRINT,NSET=TIP", "U", "*END STEP", ""));
    return String.join("\n", deck);
  }

  private static Vector3 axis(Rotation frame, double s) {
    return frame.turn(Direction3.of(0, 0, 1)).times(s);
  }

  private static String node(int id, Point3 p) {
    return String.format(Locale.ROOT, "%d,%.9e,%.9e,%.9e", id, p.x(), p.y(), p.z());
  }

  /** A square with pi r^4 / 4 = a^4 / 12. */
  private static List<String> section(int limb, double radius, Rotation frame) {
    double a = Math.pow(3 * Math.PI, 0.25) * radius;
    Vector3 first = frame.turn(new Vector3(1, 0, 0));
    return List.of(
        "*BEAM SECTION,ELSET=S" + limb + ",MATERIAL=M,SECTION=RECT",
        a + "," + a,
        first.x() + "," + first.y() + "," + first.z());
  }
}
