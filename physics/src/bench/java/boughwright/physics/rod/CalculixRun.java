// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * One run of CalculiX, the peer among general finite element programs.
 *
 * @param processTime the whole process [us]
 * @param solverTime what it prints as its own total [us]
 * @param error error of the tip as a fraction of the length
 */
public record CalculixRun(double processTime, double solverTime, double error) {
  private static final String OWN_TIME = "Total CalculiX Time:";

  /** Whether the program ccx is there. */
  public static boolean isInstalled() {
    return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, "ccx")));
  }

  /** The fewest elements whose tip is as near as asked for [fraction of the length]. */
  public static int elementsFor(BendCase bend, double error) throws IOException {
    int elements = 5;
    while (run(bend, elements).error() > error) {
      elements += 5;
    }
    return elements;
  }

  /** Runs a case in a folder of its own, which is removed. */
  public static CalculixRun run(BendCase bend, int elements) throws IOException {
    Path folder = Files.createTempDirectory("boughwright-ccx");
    try {
      CalculixDeck deck = new CalculixDeck(bend, elements);
      Files.writeString(folder.resolve("deck.inp"), deck.text());
      long start = System.nanoTime();
      Process process =
          new ProcessBuilder("ccx", "deck")
              .directory(folder.toFile())
              .redirectErrorStream(true)
              .start();
      String said =
          new String(process.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
      process.waitFor();
      double processTime = (System.nanoTime() - start) / 1e3;
      return new CalculixRun(processTime, 1e6 * ownTime(said), error(deck, folder));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    } finally {
      remove(folder);
    }
  }

  private static double ownTime(String said) {
    int at = said.indexOf(OWN_TIME);
    if (at < 0) {
      throw new IllegalStateException("CalculiX did not finish:\n" + said);
    }
    return Double.parseDouble(said.substring(at + OWN_TIME.length()).strip().split("\\s+")[0]);
  }

  private static double error(CalculixDeck deck, Path folder) throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("deck.dat"));
    String last = lines.stream().filter(line -> !line.isBlank()).reduce((a, b) -> b).orElseThrow();
    String[] moved = last.strip().split("\\s+");
    Point3 rest = deck.node(deck.elements());
    double scale = deck.bend().length() / deck.length();
    Point3 tip =
        new Point3(
            scale * (rest.x() + Double.parseDouble(moved[1])),
            scale * Double.parseDouble(moved[2]),
            scale * (rest.z() + Double.parseDouble(moved[3])));
    return deck.bend().error(tip);
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
