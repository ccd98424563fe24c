package rillwright.solver.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A new law needs a test that holds it to what the balance asks of it. */
class EveryLawIsTriedTest {

  @Test
  void everyLawHasATestThatImplementsTheContract() {
    JavaClasses classes = new ClassFileImporter().importPackages("rillwright.solver.law");
    List<JavaClass> laws =
        classes.stream()
            .filter(type -> type.isAssignableTo(HeadLaw.class) && !type.isInterface())
            .filter(type -> !type.getModifiers().contains(JavaModifier.ABSTRACT))
            .filter(type -> isProduction(type))
            .toList();
    assertTrue(laws.size() >= 16, () -> "found only " + laws);
    Stream<String> untried =
        laws.stream().map(JavaClass::getName).filter(law -> !isTried(classes, law));
    assertEquals(List.of(), untried.toList());
  }

  private static boolean isProduction(JavaClass type) {
    return !type.getSource().orElseThrow().getUri().getPath().matches(".*/(test-classes|test)/.*");
  }

  private static boolean isTried(JavaClasses classes, String law) {
    return classes.contain(law + "Test")
        && classes.get(law + "Test").isAssignableTo(HeadLawContract.class);
  }
}
