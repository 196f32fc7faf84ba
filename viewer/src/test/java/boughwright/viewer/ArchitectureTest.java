// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;

/** The rooms of the viewer, in the order in which they may import one another. */
@AnalyzeClasses(
    packages = "boughwright.viewer",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule PACKAGES_IMPORT_ONLY_THOSE_ABOVE_THEM =
      Architectures.layeredArchitecture()
          .consideringOnlyDependenciesInAnyPackage("boughwright.viewer..")
          .withOptionalLayers(true)
          .layer("scene")
          .definedBy("boughwright.viewer.scene..")
          .layer("gl")
          .definedBy("boughwright.viewer.gl..")
          .layer("picture")
          .definedBy("boughwright.viewer.picture..")
          .layer("sheet")
          .definedBy("boughwright.viewer.sheet..")
          .layer("window")
          .definedBy("boughwright.viewer.window..")
          .layer("command")
          .definedBy("boughwright.viewer.command..")
          .whereLayer("scene")
          .mayNotAccessAnyLayer()
          .whereLayer("gl")
          .mayOnlyAccessLayers("scene")
          .whereLayer("picture")
          .mayOnlyAccessLayers("scene", "gl")
          .whereLayer("sheet")
          .mayOnlyAccessLayers("scene", "gl", "picture")
          .whereLayer("window")
          .mayOnlyAccessLayers("scene", "gl", "picture", "sheet")
          .whereLayer("command")
          .mayOnlyAccessLayers("scene", "gl", "picture", "sheet", "window");

  @ArchTest
  static final ArchRule ROOMS_OF_THE_WINDOW_IMPORT_ONLY_THOSE_ABOVE_THEM =
      Architectures.layeredArchitecture()
          .consideringOnlyDependenciesInAnyPackage("boughwright.viewer.window..")
          .withOptionalLayers(true)
          .layer("look")
          .definedBy("boughwright.viewer.window.look..")
          .layer("work")
          .definedBy("boughwright.viewer.window.work..")
          .layer("canvas")
          .definedBy("boughwright.viewer.window.canvas..")
          .layer("sketch")
          .definedBy("boughwright.viewer.window.sketch..")
          .layer("choose")
          .definedBy("boughwright.viewer.window.choose..")
          .layer("pull")
          .definedBy("boughwright.viewer.window.pull..")
          .layer("shell")
          .definedBy("boughwright.viewer.window.shell..")
          .whereLayer("look")
          .mayNotAccessAnyLayer()
          .whereLayer("work")
          .mayNotAccessAnyLayer()
          .whereLayer("canvas")
          .mayOnlyAccessLayers("look", "work")
          .whereLayer("sketch")
          .mayOnlyAccessLayers("look", "work", "canvas")
          .whereLayer("choose")
          .mayOnlyAccessLayers("look", "work", "canvas")
          .whereLayer("pull")
          .mayOnlyAccessLayers("look", "work", "canvas")
          .whereLayer("shell")
          .mayOnlyAccessLayers("look", "work", "canvas", "sketch", "choose", "pull");

  @ArchTest
  static final ArchRule ONLY_GL_USES_LWJGL =
      noClasses()
          .that()
          .resideOutsideOfPackage("boughwright.viewer.gl..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.lwjgl..");

  @ArchTest
  static final ArchRule SCENE_AND_GL_KNOW_NO_AWT =
      noClasses()
          .that()
          .resideInAnyPackage("boughwright.viewer.scene..", "boughwright.viewer.gl..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.awt..", "javax.swing..", "javax.imageio..");

  @ArchTest
  static final ArchRule PICTURES_NEED_NO_WINDOW =
      noClasses()
          .that()
          .resideInAPackage("boughwright.viewer.picture..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javax.swing..");

  @ArchTest
  static final ArchRule PACKAGES_HAVE_NO_CYCLE =
      slices().matching("boughwright.viewer.(*)..").should().beFreeOfCycles();
}
