package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule of the architecture fails where a class that breaks it is planted. */
class PlantedViolationsTest {
  @TempDir private Path folder;

  static Stream<Arguments> planted() {
    return Stream.of(
        arguments(
            "PACKAGES_FORM_NO_CYCLE",
            List.of(
                "rillwright.cli.planted.one.A: rillwright.cli.planted.two.B",
                "rillwright.cli.planted.two.B: rillwright.cli.planted.one.A")),
        arguments(
            "LAYERS_LOOK_DOWN_ONLY",
            List.of("rillwright.cli.file.Planted: rillwright.cli.command.output.ExitStatus")),
        arguments(
            "JACKSON_STAYS_WHERE_FILES_ARE_READ_AND_JSON_IS_WRITTEN",
            List.of("rillwright.cli.report.Planted: tools.jackson.core.JsonParser")),
        arguments(
            "TERMINALS_STAY_WHERE_PEOPLE_ANSWER",
            List.of("rillwright.cli.interview.Planted: org.jline.terminal.Terminal")),
        arguments(
            "BROWSERS_ARE_ANSWERED_IN_ONE_PLACE",
            List.of("rillwright.cli.page.view.Planted: com.sun.net.httpserver.HttpServer")),
        arguments(
            "NOTHING_IS_MAPPED_TO_OBJECTS",
            List.of("rillwright.cli.json.Planted: tools.jackson.databind.JsonNode")),
        arguments(
            "OTHER_LIBRARIES_STAY_BELOW",
            List.of("rillwright.cli.report.picture.Planted: org.knowm.xchart.XYChart")),
        arguments(
            "NAMES_SAY_WHAT_A_CLASS_IS",
            List.of("rillwright.cli.report.PlantedHelper: java.lang.String")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("planted")
  void aRuleFailsWhereItIsBroken(String rule, List<String> classes) throws Exception {
    assertTrue(rule(rule).evaluate(compiled(classes)).hasViolation());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("planted")
  void aRuleLetsAnInnocentClassPass(String rule, List<String> classes) throws Exception {
    String innocent = "rillwright.cli.report.page.Innocent: java.util.List";
    ArchRule lenient = rule(rule).allowEmptyShould(true);
    assertFalse(lenient.evaluate(compiled(List.of(innocent))).hasViolation());
  }

  @Test
  void noRuleIsForgotten() {
    Set<String> rules =
        Arrays.stream(ArchitectureTest.class.getDeclaredFields())
            .filter(field -> field.isAnnotationPresent(ArchTest.class))
            .map(field -> field.getName())
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> broken =
        planted()
            .map(each -> (String) each.get()[0])
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(rules, broken);
  }

  private static ArchRule rule(String name) throws ReflectiveOperationException {
    return (ArchRule) ArchitectureTest.class.getDeclaredField(name).get(null);
  }

  /** Classes written as {@code name: what it has a field of}. */
  private JavaClasses compiled(List<String> classes) throws IOException {
    List<String> names = classes.stream().map(each -> each.split(": ")[0]).toList();
    List<String> stubs =
        classes.stream()
            .map(each -> each.split(": ")[1])
            .filter(used -> !used.matches("(java|com.sun).*") && !names.contains(used))
            .map(used -> used + ": Object")
            .toList();
    compile(stubs, folder.resolve("stubs"));
    compile(classes, folder.resolve("planted"));
    return new ClassFileImporter().importPath(folder.resolve("planted"));
  }

  private void compile(List<String> classes, Path into) throws IOException {
    List<String> arguments =
        new ArrayList<>(
            List.of("-proc:none", "-cp", "" + folder.resolve("stubs"), "-d", "" + into));
    for (String each : classes) {
      String[] sides = each.split(": ");
      int dot = sides[0].lastIndexOf('.');
      String name = sides[0].substring(dot + 1);
      Path file = Files.createDirectories(folder.resolve(sides[0])).resolve(name + ".java");
      Files.writeString(
          file,
          "package "
              + sides[0].substring(0, dot)
              + "; public class "
              + name
              + " {"
              + sides[1]
              + " f;}");
      arguments.add(file.toString());
    }
    Files.createDirectories(into);
    if (!classes.isEmpty()) {
      int status =
          ToolProvider.getSystemJavaCompiler()
              .run(null, null, null, arguments.toArray(String[]::new));
      assertEquals(0, status, () -> "not compiled: " + classes);
    }
  }
}
