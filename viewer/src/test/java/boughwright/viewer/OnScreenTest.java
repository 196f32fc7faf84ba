// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import boughwright.viewer.window.OnScreen;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.awt.Robot;
import java.awt.Window;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/** Which test classes have the screen to themselves. */
@AnalyzeClasses(
    packages = "boughwright.viewer",
    importOptions = ImportOption.OnlyIncludeTests.class)
class OnScreenTest {
  private static final DescribedPredicate<JavaClass> HAVE_TESTS =
      describe(
          "have tests",
          type ->
              type.getMethods().stream()
                  .anyMatch(
                      method ->
                          method.isAnnotatedWith(Test.class)
                              || method.isAnnotatedWith(ParameterizedTest.class)));

  private static final DescribedPredicate<JavaClass> USERS_OF_THE_SCREEN =
      describe(
          "users of a window or the robot, by other classes of the tests too",
          OnScreenTest::usesTheScreen);

  @ArchTest
  static final ArchRule WHO_SHOWS_WINDOWS_OR_MOVES_THE_MOUSE_SAYS_SO =
      classes().that(HAVE_TESTS).and(USERS_OF_THE_SCREEN).should().beAnnotatedWith(OnScreen.class);

  @ArchTest
  static final ArchRule NO_OTHER_TAKES_A_TURN =
      classes().that().areAnnotatedWith(OnScreen.class).should(be(USERS_OF_THE_SCREEN));

  private static boolean usesTheScreen(JavaClass test) {
    Set<JavaClass> seen = new HashSet<>(Set.of(test));
    Deque<JavaClass> next = new ArrayDeque<>(seen);
    while (!next.isEmpty()) {
      for (var dependency : next.pop().getDirectDependenciesFromSelf()) {
        JavaClass used = dependency.getTargetClass();
        if (seen.add(used)) {
          if (isOfTheScreen(used.reflect())) {
            return true;
          }
          // classes of others and of the program are not read, and depend on nothing here
          next.push(used);
        }
      }
    }
    return false;
  }

  private static boolean isOfTheScreen(Class<?> type) {
    return Window.class.isAssignableFrom(type) || Robot.class.isAssignableFrom(type);
  }
}
