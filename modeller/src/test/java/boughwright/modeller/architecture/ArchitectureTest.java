// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Imports go one way: a package imports only packages listed above it. No exceptions. */
class ArchitectureTest {
  private static final String ROOT = "boughwright.modeller.";

  /** All packages of the modeller, from the ground up. */
  private static final List<String> ORDER =
      List.of(
          "problem",
          "geometry",
          "units",
          "species",
          "tree",
          "plan",
          "edit",
          "history",
          "measure",
          "design.shape",
          "design.sight",
          "design.ground",
          "design.front",
          "design.review",
          "file");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("boughwright.modeller");

  static List<String> packages() {
    return ORDER;
  }

  @Test
  void everyPackage_hasAPlaceInTheOrder() {
    Set<String> found = CLASSES.stream().map(JavaClass::getPackageName).collect(Collectors.toSet());
    assertThat(found).isSubsetOf(ORDER.stream().map(name -> ROOT + name).toList());
    assertThat(found).contains(ROOT + "problem", ROOT + "tree", ROOT + "file");
  }

  @ParameterizedTest
  @MethodSource("packages")
  void package_importsOnlyPackagesAboveIt(String name) {
    String[] below =
        ORDER.stream()
            .skip(ORDER.indexOf(name) + 1L)
            .map(other -> ROOT + other + "..")
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage(ROOT + name + "..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(below)
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  @Test
  void packages_haveNoCycle() {
    slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void modeller_knowsNoWindowAndNoOtherModule() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.lwjgl..",
            "java.awt..",
            "javax.swing..",
            "boughwright.physics..",
            "boughwright.viewer..")
        .check(CLASSES);
  }

  @Test
  void units_areUnknownToTheTreeAndItsEditing() {
    noClasses()
        .that()
        .resideInAnyPackage(ROOT + "tree..", ROOT + "edit..", ROOT + "plan..", ROOT + "geometry..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(ROOT + "units..")
        .check(CLASSES);
  }

  @Test
  void jackson_isUsedByTheFileAlone() {
    noClasses()
        .that()
        .resideOutsideOfPackages(ROOT + "file..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("com.fasterxml..")
        .check(CLASSES);
  }

  @Test
  void publicClasses_stateTheirPackage_inAKnownRoom() {
    classes()
        .that()
        .arePublic()
        .should()
        .resideInAnyPackage(ROOT + "*", ROOT + "design.*")
        .check(CLASSES);
  }

  @Test
  void text_isFormattedTheSameInEveryCountry() {
    noClasses()
        .should()
        .callMethod(String.class, "format", String.class, Object[].class)
        .orShould()
        .callMethod(String.class, "formatted", Object[].class)
        .check(CLASSES);
  }
}
