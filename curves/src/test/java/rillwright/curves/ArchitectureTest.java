package rillwright.curves;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "rillwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule NO_PACKAGE_IS_IN_A_CYCLE =
      slices().matching("rillwright.curves.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule ONLY_CHARTS_KNOW_THE_DRAWING_LIBRARIES =
      noClasses()
          .that()
          .resideOutsideOfPackage("rillwright.curves.chart")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.knowm..", "org.apache.batik..");

  @ArchTest
  static final ArchRule CURVES_USE_THE_SOLVER_AND_NEVER_THE_COMMANDS =
      classes()
          .that()
          .resideInAPackage("rillwright.curves..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "javax.imageio..",
              "javax.xml..",
              "org.w3c.dom..",
              "org.knowm..",
              "org.apache.batik..",
              "org.apache.commons.text..",
              "rillwright.curves..",
              "rillwright.solver..");

  @ArchTest
  static final ArchRule THE_SOLVER_DOES_NOT_KNOW_CURVES =
      noClasses()
          .that()
          .resideInAPackage("rillwright.solver..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("rillwright.curves..");

  @ArchTest
  static final ArchRule UNITS_AND_SHEETS_DO_NOT_DRAW =
      noClasses()
          .that()
          .resideInAnyPackage("rillwright.curves.unit..", "rillwright.curves.sheet..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("rillwright.curves.chart..", "java.awt..");

  @ArchTest
  static final ArchRule NAMES_SAY_WHAT_A_CLASS_IS =
      noClasses()
          .should()
          .haveSimpleNameEndingWith("Util")
          .orShould()
          .haveSimpleNameEndingWith("Helper")
          .orShould()
          .haveSimpleNameEndingWith("Manager")
          .orShould()
          .haveSimpleNameEndingWith("Impl");
}
