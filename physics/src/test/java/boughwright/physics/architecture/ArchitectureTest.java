// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.architecture;

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
  private static final String ROOT = "boughwright.physics.";

  /** All packages of the physics, from the ground up. */
  private static final List<String> ORDER =
      List.of("rod", "wood", "hold", "grow", "trial", "stage", "reach", "season", "apex", "choice");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("boughwright.physics");

  static List<String> packages() {
    return ORDER;
  }

  @Test
  void everyPackage_hasAPlaceInTheOrder() {
    Set<String> found = CLASSES.stream().map(JavaClass::getPackageName).collect(Collectors.toSet());
    assertThat(found).isSubsetOf(ORDER.stream().map(name -> ROOT + name).toList());
    assertThat(found).contains(ROOT + "rod", ROOT + "wood", ROOT + "trial");
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
  void physics_knowsNoWindowNoFileAndNoUnits() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.lwjgl..",
            "java.awt..",
            "javax.swing..",
            "com.fasterxml..",
            "boughwright.modeller.units..",
            "boughwright.modeller.file..",
            "boughwright.viewer..")
        .check(CLASSES);
  }

  @Test
  void rod_knowsNoTreeAndNoWood() {
    noClasses()
        .that()
        .resideInAPackage(ROOT + "rod..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "boughwright.modeller.tree..",
            "boughwright.modeller.plan..",
            "boughwright.modeller.species..")
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
