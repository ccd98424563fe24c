package rillwright.curves.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.curves.sheet.fault.SheetFaults;

/** What spreadsheets make of one and the same sheet, each habit with each other one. */
class SpreadsheetExportTest {
  private static final List<List<String>> TABLE =
      List.of(
          List.of("# maker: nobody"),
          List.of("# rated power: 0.5 kW"),
          List.of("# voltage: 230 V"),
          List.of("flow [m3/h]", "head [m]", "power [W]"),
          List.of("0", "9.5", "420"),
          List.of("5.25", "9.1", "505.5"),
          List.of("20", "3.2", "700"));

  /** How a table is written. */
  private record Habit(String name, UnaryOperator<String> of) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<List<Habit>> exports() {
    List<List<Habit>> all = new ArrayList<>(List.of(List.of()));
    for (List<Habit> choice :
        List.of(
            List.of(new Habit("commas", text -> text), new Habit("semicolons", text -> text)),
            List.of(
                new Habit("bare", text -> text),
                new Habit(
                    "quoted",
                    text ->
                        text.lines()
                            .map(line -> '"' + line.replaceAll("[;|]", "\"$0\"") + '"')
                            .collect(Collectors.joining("\n")))),
            List.of(
                new Habit("as it is", text -> text),
                new Habit("empty cells", text -> text.replace("\n", "||\n")),
                new Habit("sep= first", text -> "sep=|\n" + text)),
            List.of(
                new Habit("LF", text -> text),
                new Habit("CR LF", text -> text.replace("\n", "\r\n")),
                new Habit("CR", text -> text.replace('\n', '\r'))),
            List.of(
                new Habit("no mark", text -> text),
                new Habit("marked", text -> '\uFEFF' + text)))) {
      List<List<Habit>> more = new ArrayList<>();
      for (List<Habit> before : all) {
        for (Habit habit : choice) {
          List<Habit> longer = new ArrayList<>(before);
          longer.add(habit);
          more.add(longer);
        }
      }
      all = more;
    }
    return all.stream();
  }

  private static String written(List<Habit> habits) {
    boolean semicolons = habits.get(0).name().equals("semicolons");
    String text =
        TABLE.stream().map(row -> String.join("|", row)).collect(Collectors.joining("\n")) + "\n";
    text = semicolons ? text.replace('.', ',') : text;
    for (Habit habit : habits.subList(1, habits.size())) {
      text = habit.of().apply(text);
    }
    return text.replace("sep=|", semicolons ? "sep=;" : "sep=,")
        .replace('|', semicolons ? ';' : ',');
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("exports")
  void allReadAlike(List<Habit> habits) throws SheetFaults {
    String text = written(habits);
    DataSheet sheet = new DataSheetReader(1000).read("x.csv", text.getBytes(UTF_8));
    assertEquals(
        List.of(0.0, 5.25 / 3600, 20 / 3600.0),
        sheet.curve().points().stream().map(point -> point.flowM3PerS()).toList(),
        text);
    assertEquals(9.1, sheet.curve().points().get(1).headM());
    assertEquals(505.5, sheet.curve().points().get(1).powerW().getAsDouble());
    assertEquals("nobody", sheet.facts().maker().orElseThrow());
    assertEquals(500, sheet.facts().nameplate().ratedPowerW().getAsDouble());
    assertEquals(230, sheet.facts().nameplate().voltageV().getAsDouble());
    assertEquals(List.of(), sheet.facts().remarks());
  }
}
