package rillwright.solver;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import rillwright.solver.law.HeadLaw;

/** Which way the packages of the solver may look. Rules for packages to come hold when they do. */
@AnalyzeClasses(
    packages = "rillwright.solver",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final DescribedPredicate<JavaClass> OF_THE_PROJECT =
      resideInAnyPackage("rillwright..");

  private static final DescribedPredicate<JavaClass> HEAD_LAW_OR_SEVERAL =
      describe(
          "the contract of laws",
          type -> type.getBaseComponentType().isEquivalentTo(HeadLaw.class));

  @ArchTest
  static final ArchRule packagesFormNoCycle =
      slices().matching("rillwright.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule layersLookDownOnly =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("water")
          .definedBy("rillwright.solver.water..")
          .layer("law")
          .definedBy("rillwright.solver.law..")
          .layer("network")
          .definedBy("rillwright.solver.network..")
          .layer("balance")
          .definedBy("rillwright.solver.balance..")
          .layer("steady")
          .definedBy("rillwright.solver.steady..")
          .layer("pumping")
          .definedBy("rillwright.solver.pumping..")
          .layer("finding")
          .definedBy("rillwright.solver.finding..")
          .layer("stream")
          .definedBy("rillwright.solver.stream..")
          .layer("study")
          .definedBy("rillwright.solver.study..")
          .whereLayer("water")
          .mayNotAccessAnyLayer()
          .whereLayer("law")
          .mayOnlyAccessLayers("water")
          .whereLayer("network")
          .mayOnlyAccessLayers("law", "water")
          .whereLayer("balance")
          .mayOnlyAccessLayers("law")
          .whereLayer("steady")
          .mayOnlyAccessLayers("network", "balance", "law", "water")
          .whereLayer("pumping")
          .mayOnlyAccessLayers("steady", "network", "balance", "law", "water")
          .whereLayer("finding")
          .mayOnlyAccessLayers("pumping", "steady", "network", "balance", "law", "water")
          .whereLayer("stream")
          .mayOnlyAccessLayers("finding", "pumping", "steady", "network", "balance", "law", "water")
          .whereLayer("study")
          .mayNotBeAccessedByAnyLayer();

  @ArchTest
  static final ArchRule lawsUseNothingButLawsAndWater =
      noClasses()
          .that()
          .resideInAPackage("rillwright.solver.law..")
          .should()
          .dependOnClassesThat(
              OF_THE_PROJECT.and(
                  not(
                      resideInAnyPackage(
                          "rillwright.solver.law..",
                          "rillwright.solver.water..",
                          "rillwright.solver.invariant.."))));

  @ArchTest
  static final ArchRule theContractOfLawsKnowsNoParticularLaw =
      noClasses()
          .that()
          .resideInAPackage("rillwright.solver.law")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("rillwright.solver.law.(*)..");

  @ArchTest
  static final ArchRule balanceSeesOnlyTheContractOfLaws =
      noClasses()
          .that()
          .resideInAPackage("rillwright.solver.balance..")
          .should()
          .dependOnClassesThat(
              OF_THE_PROJECT.and(
                  not(resideInAnyPackage("rillwright.solver.balance..").or(HEAD_LAW_OR_SEVERAL))))
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule studiesDoNotKnowEachOther =
      slices()
          .matching("rillwright.solver.study.(*)..")
          .should()
          .notDependOnEachOther()
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule solverReadsAndDrawsNothing =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.io..",
              "java.nio..",
              "java.net..",
              "java.awt..",
              "javax.swing..",
              "org.knowm.xchart..",
              "tools.jackson..",
              "com.fasterxml.jackson..",
              "picocli..");

  @ArchTest
  static final ArchRule solverNeedsNothingOfTheModulesAboveIt =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("rillwright.curves..", "rillwright.cli..");

  @ArchTest
  static final ArchRule matricesStayInOnePackage =
      noClasses()
          .that()
          .resideOutsideOfPackage("rillwright.solver.balance.linear..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.ejml..");

  @ArchTest
  static final ArchRule graphsStayInPackagesNamedTopology =
      noClasses()
          .that()
          .resideOutsideOfPackage("..topology..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.jgrapht..");

  @ArchTest
  static final ArchRule statisticsStayInOnePackage =
      noClasses()
          .that()
          .resideOutsideOfPackage("rillwright.solver.study.uncertainty..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.commons.statistics..");

  @ArchTest
  static final ArchRule integratorsStayInOnePackage =
      noClasses()
          .that()
          .resideOutsideOfPackage("rillwright.solver.stream.time..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.hipparchus..");

  /** Larger still, and to be split by meaning; nothing else may join them. */
  private static final Set<String> LARGER =
      Set.of("rillwright.solver.network", "rillwright.solver.finding", "rillwright.solver.stream");

  @ArchTest
  static final ArchRule noPackageHasMoreThanTwentyFiles =
      classes().should(lieAmongAtMostTwentyFiles());

  private static ArchCondition<JavaClass> lieAmongAtMostTwentyFiles() {
    return new ArchCondition<>("lie in a package of at most twenty files") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        long files =
            type.getPackage().getClasses().stream()
                .filter(JavaClass::isTopLevelClass)
                .filter(one -> !one.getSimpleName().equals("package-info"))
                .count();
        boolean few = files <= 20 || LARGER.contains(type.getPackageName());
        String message = type.getName() + " lies among " + files + " files";
        events.add(new SimpleConditionEvent(type, few, message));
      }
    };
  }

  @ArchTest
  static final ArchRule namesSayWhatAClassIs =
      noClasses()
          .should(
              com.tngtech.archunit.lang.conditions.ArchConditions.be(
                  describe(
                      "named for nothing",
                      type -> type.getSimpleName().matches(".*(Impl|Utils?|Helper|Manager)"))));
}
