package rillwright.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Which way the packages of the program may look; {@link PlantedViolationsTest} breaks each. */
@AnalyzeClasses(packages = "rillwright.cli", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule PACKAGES_FORM_NO_CYCLE =
      slices().matching("rillwright.cli.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule LAYERS_LOOK_DOWN_ONLY =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("wording")
          .definedBy("rillwright.cli.wording..")
          .layer("catalogue")
          .definedBy("rillwright.cli.catalogue")
          .layer("file")
          .definedBy("rillwright.cli.file..")
          .layer("pricing")
          .definedBy("rillwright.cli.pricing..")
          .layer("study")
          .definedBy("rillwright.cli.study..")
          .layer("interview")
          .definedBy("rillwright.cli.interview..")
          .layer("report")
          .definedBy("rillwright.cli.report..", "rillwright.cli.catalogue.page..")
          .layer("page")
          .definedBy("rillwright.cli.page..")
          .layer("command")
          .definedBy("rillwright.cli.command..")
          .withOptionalLayers(true)
          .whereLayer("wording")
          .mayNotAccessAnyLayer()
          .whereLayer("catalogue")
          .mayOnlyAccessLayers("wording")
          .whereLayer("file")
          .mayOnlyAccessLayers("catalogue", "wording")
          .whereLayer("pricing")
          .mayOnlyAccessLayers("file", "catalogue", "wording")
          .whereLayer("study")
          .mayOnlyAccessLayers("pricing", "file", "catalogue", "wording")
          .whereLayer("interview")
          .mayOnlyAccessLayers("study", "file", "catalogue", "wording")
          .whereLayer("report")
          .mayOnlyAccessLayers("study", "pricing", "file", "catalogue", "wording")
          .whereLayer("page")
          .mayOnlyBeAccessedByLayers("command")
          .whereLayer("command")
          .mayNotBeAccessedByAnyLayer();

  @ArchTest
  static final ArchRule JACKSON_STAYS_WHERE_FILES_ARE_READ_AND_JSON_IS_WRITTEN =
      noClasses()
          .that()
          .resideOutsideOfPackages("rillwright.cli.file.tree", "rillwright.cli.json")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tools.jackson..", "com.fasterxml.jackson..", "org.snakeyaml..");

  @ArchTest
  static final ArchRule TERMINALS_STAY_WHERE_PEOPLE_ANSWER =
      noClasses()
          .that()
          .resideOutsideOfPackage("rillwright.cli.command.talk")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.jline..");

  @ArchTest
  static final ArchRule BROWSERS_ARE_ANSWERED_IN_ONE_PLACE =
      noClasses()
          .that()
          .resideOutsideOfPackage("rillwright.cli.page.web")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.sun.net.httpserver..");

  @ArchTest
  static final ArchRule NOTHING_IS_MAPPED_TO_OBJECTS =
      noClasses().should().dependOnClassesThat().resideInAPackage("tools.jackson.databind..");

  @ArchTest
  static final ArchRule OTHER_LIBRARIES_STAY_BELOW =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.knowm..",
              "org.apache.batik..",
              "org.apache.commons.statistics..",
              "org.ejml..",
              "org.hipparchus..",
              "org.jgrapht..",
              "java.awt..");

  @ArchTest
  static final ArchRule NAMES_SAY_WHAT_A_CLASS_IS =
      noClasses().should().haveNameMatching(".*(Util|Utils|Helper|Manager|Impl)");
}
