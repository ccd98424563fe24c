package rillwright.curves;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;

@AnalyzeClasses(packages = "rillwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule NO_PACKAGE_IS_IN_A_CYCLE =
      slices().matching("rillwright.curves.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule ONLY_PLOTS_KNOW_XCHART =
      noClasses()
          .that()
          .resideOutsideOfPackage("rillwright.curves.chart.plot")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.knowm..");

  @ArchTest
  static final ArchRule ONLY_DRAWINGS_KNOW_BATIK =
      noClasses()
          .that()
          .resideOutsideOfPackage("rillwright.curves.chart.svg")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.batik..");

  @ArchTest
  static final ArchRule NO_PACKAGE_HAS_MORE_THAN_TWENTY_FILES =
      classes().that().resideInAPackage("rillwright.curves..").should(beAmongAtMostTwentyFiles());

  private static ArchCondition<JavaClass> beAmongAtMostTwentyFiles() {
    return new ArchCondition<>("lie in a package of at most twenty files") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        long files =
            type.getPackage().getClasses().stream()
                .filter(it -> it.isTopLevelClass() && !it.isArray())
                .count();
        String message = type.getName() + " lies among " + files + " files";
        events.add(new SimpleConditionEvent(type, files <= 20, message));
      }
    };
  }

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
