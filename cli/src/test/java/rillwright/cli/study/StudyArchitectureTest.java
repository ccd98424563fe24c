package rillwright.cli.study;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.study.balance.ValveSweeps;
import rillwright.cli.study.choice.CandidateCurves;
import rillwright.cli.study.choice.SizeCurves;
import rillwright.curves.trace.SystemCurve;
import rillwright.solver.stream.time.StartAndStop;
import rillwright.solver.study.diagnosis.inference.Diagnostician;
import rillwright.solver.study.valvesetting.ValveSweep;
import rillwright.solver.trial.PumpTrials;
import rillwright.solver.trial.TrialSites;

/** Which way studies, commands and reports may look. */
@AnalyzeClasses(packages = "rillwright.cli", importOptions = ImportOption.DoNotIncludeTests.class)
class StudyArchitectureTest {
  private static final DescribedPredicate<JavaClass> SOLVERS =
      describe(
              "solve",
              (JavaClass type) ->
                  type.getPackageName().startsWith("rillwright.solver")
                      && type.getSimpleName().matches(".*(Finder|Chooser)"))
          .or(assignableTo(StartAndStop.class))
          .or(assignableTo(Diagnostician.class))
          .or(assignableTo(PumpTrials.class))
          .or(assignableTo(TrialSites.class))
          .or(assignableTo(Request.class));

  private static final DescribedPredicate<JavaMethodCall> A_TRACE =
      describe(
          "a trace that balances networks",
          call -> {
            JavaClass owner = call.getTargetOwner();
            return (owner.isEquivalentTo(SystemCurve.class) && call.getName().equals("trace"))
                || (call.getName().equals("of")
                    && (owner.isEquivalentTo(ValveSweep.class)
                        || owner.isEquivalentTo(ValveSweeps.class)
                        || owner.isEquivalentTo(CandidateCurves.class)
                        || owner.isEquivalentTo(SizeCurves.class)));
          });

  @ArchTest
  static final ArchRule studiesKnowNoTerminalNoPathsAndNoWords =
      noClasses()
          .that()
          .resideInAPackage("rillwright.cli.study..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "picocli..",
              "java.io..",
              "java.nio.file..",
              "rillwright.cli.command..",
              "rillwright.cli.report..",
              "rillwright.curves.wording..");

  @ArchTest
  static final ArchRule onlyCommandsKnowTheCommandLine =
      noClasses()
          .that()
          .resideOutsideOfPackages("rillwright.cli", "rillwright.cli.command..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  @ArchTest
  static final ArchRule nothingButTheEntranceKnowsCommands =
      noClasses()
          .that()
          .resideOutsideOfPackages("rillwright.cli", "rillwright.cli.command..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("rillwright.cli.command..");

  @ArchTest
  static final ArchRule reportsTellAndDrawAndDoNotSolve =
      noClasses()
          .that()
          .resideInAPackage("rillwright.cli.report..")
          .should()
          .dependOnClassesThat(SOLVERS)
          .orShould()
          .callMethodWhere(A_TRACE);

  @ParameterizedTest
  @CsvSource({
    "study.planted.PlantedStudies$KnowsTheCommandLine, picocli",
    "study.planted.PlantedStudies$KnowsTheCommandLine, the command line",
    "study.planted.PlantedStudies$KnowsAPath, java.nio.file",
    "study.planted.PlantedStudies$KnowsAReport, rillwright.cli.report",
    "study.planted.PlantedStudies$KnowsWords, rillwright.curves.wording"
  })
  void aPlantedStudyIsSeen(String planted, String knows) {
    ArchRule rule =
        knows.equals("the command line")
            ? onlyCommandsKnowTheCommandLine
            : studiesKnowNoTerminalNoPathsAndNoWords;
    assertSeen(rule, planted);
  }

  @ParameterizedTest
  @CsvSource({"Solves", "Traces", "Asks"})
  void aPlantedPictureIsSeen(String planted) {
    assertSeen(
        reportsTellAndDrawAndDoNotSolve, "report.picture.planted.PlantedPictures$" + planted);
  }

  private static void assertSeen(ArchRule rule, String planted) {
    JavaClasses imported =
        new ClassFileImporter()
            .importPackages("rillwright.cli.study.planted", "rillwright.cli.report.picture.planted")
            .that(describe(planted, type -> type.getName().equals("rillwright.cli." + planted)));
    assertTrue(imported.size() == 1 && rule.evaluate(imported).hasViolation(), planted);
  }
}
