package rillwright.solver;

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
  private static final String EVERYTHING = "rillwright.solver.planted.KnowsEverything";

  /** By rule: the class that breaks it, and others that it needs for that. */
  private static final Map<String, List<String>> PLANTED =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(
                  "packagesFormNoCycle",
                  List.of(
                      "rillwright.solver.planted.one.There", "rillwright.solver.planted.two.Back")),
              Map.entry(
                  "layersLookDownOnly",
                  List.of(
                      "rillwright.solver.water.planted.WaterKnowsNetworks",
                      "rillwright.solver.network.Network")),
              Map.entry(
                  "lawsUseNothingButLawsAndWater",
                  List.of("rillwright.solver.law.planted.LawKnowsParts")),
              Map.entry(
                  "theContractOfLawsKnowsNoParticularLaw",
                  List.of("rillwright.solver.law.PlantedContract")),
              Map.entry(
                  "balanceSeesOnlyTheContractOfLaws",
                  List.of("rillwright.solver.balance.planted.BalanceKnowsBores")),
              Map.entry(
                  "studiesDoNotKnowEachOther",
                  List.of(
                      "rillwright.solver.study.planted.StudyKnowsStudy",
                      "rillwright.solver.study.duty.Duty")),
              Map.entry("solverReadsAndDrawsNothing", List.of(EVERYTHING)),
              Map.entry("solverNeedsNothingOfTheModulesAboveIt", List.of(EVERYTHING)),
              Map.entry("matricesStayInOnePackage", List.of(EVERYTHING)),
              Map.entry("graphsStayInPackagesNamedTopology", List.of(EVERYTHING)),
              Map.entry("statisticsStayInOnePackage", List.of(EVERYTHING)),
              Map.entry("integratorsStayInOnePackage", List.of(EVERYTHING)),
              Map.entry(
                  "noPackageHasMoreThanTwentyFiles",
                  IntStream.rangeClosed(1, 21)
                      .mapToObj(i -> "rillwright.solver.planted.crowd.Crowd" + i)
                      .toList()),
              Map.entry("namesSayWhatAClassIs", List.of("rillwright.solver.planted.PondHelper"))));

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
