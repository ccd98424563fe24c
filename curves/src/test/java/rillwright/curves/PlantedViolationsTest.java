package rillwright.curves;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each rule of {@link ArchitectureTest} is shown a class that breaks it, and reports that class.
 */
class PlantedViolationsTest {
  private static final String EVERYTHING = "rillwright.curves.planted.KnowsEverything";

  /** By rule: the class that breaks it, and others that it needs for that. */
  private static final Map<String, List<String>> PLANTED =
      new TreeMap<>(
          Map.of(
              "NO_PACKAGE_IS_IN_A_CYCLE",
              List.of("rillwright.curves.planted.one.There", "rillwright.curves.planted.two.Back"),
              "ONLY_PLOTS_KNOW_XCHART",
              List.of(EVERYTHING),
              "ONLY_DRAWINGS_KNOW_BATIK",
              List.of(EVERYTHING),
              "NO_PACKAGE_HAS_MORE_THAN_TWENTY_FILES",
              IntStream.rangeClosed(1, 21)
                  .mapToObj(i -> "rillwright.curves.planted.crowd.Crowd" + i)
                  .toList(),
              "CURVES_USE_THE_SOLVER_AND_NEVER_THE_COMMANDS",
              List.of(EVERYTHING),
              "THE_SOLVER_DOES_NOT_KNOW_CURVES",
              List.of("rillwright.solver.planted.SolverKnowsCurves"),
              "UNITS_AND_SHEETS_DO_NOT_DRAW",
              List.of("rillwright.curves.unit.planted.UnitThatDraws"),
              "NAMES_SAY_WHAT_A_CLASS_IS",
              List.of("rillwright.curves.planted.CurveHelper")));

  static Stream<String> rules() {
    return PLANTED.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void reportsWhatBreaksIt(String name) throws ReflectiveOperationException {
    List<String> planted = PLANTED.get(name);
    Class<?>[] classes = new Class<?>[planted.size()];
    for (int i = 0; i < classes.length; i++) {
      classes[i] = Class.forName(planted.get(i));
    }
    JavaClasses imported = new ClassFileImporter().importClasses(classes);
    Field field = ArchitectureTest.class.getDeclaredField(name);
    EvaluationResult result = ((ArchRule) field.get(null)).evaluate(imported);
    String report = String.join("\n", result.getFailureReport().getDetails());
    assertTrue(report.contains(planted.get(0)), () -> name + " sees nothing: " + report);
  }

  @Test
  void everyRuleIsShownToSee() {
    TreeSet<String> rules = new TreeSet<>();
    Arrays.stream(ArchitectureTest.class.getDeclaredFields())
        .filter(field -> field.isAnnotationPresent(ArchTest.class))
        .forEach(field -> rules.add(field.getName()));
    assertEquals(rules, PLANTED.keySet());
  }
}
