package rillwright.cli.file;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Which way the packages that read files may look. */
@AnalyzeClasses(
    packages = "rillwright.cli.file",
    importOptions = ImportOption.DoNotIncludeTests.class)
class FileArchitectureTest {

  @ArchTest
  static final ArchRule packagesFormNoCycle =
      slices().matching("rillwright.cli.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule parsersStayInTheTree =
      noClasses()
          .that()
          .resideOutsideOfPackage("rillwright.cli.file.tree")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tools.jackson..", "org.snakeyaml..");

  @ArchTest
  static final ArchRule quantitiesKnowNoFiles =
      noClasses()
          .that()
          .resideInAPackage("rillwright.cli.file.quantity")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("rillwright.cli.file.tree..", "rillwright.cli.file.field..");

  @ArchTest
  static final ArchRule readersKnowNoCommandsOrReports =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("rillwright.cli.command..", "rillwright.cli.report..");
}
