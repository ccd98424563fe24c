package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a stream's numbers may be: a slip in one is reported, not computed with. */
class StreamLimitsTest {
  private static final String REACH = "{length: 9 ft, drop: 1 ft, width: 2 ft, bed: {n: 0.04}}";

  private static String with(String field) {
    String name = field.substring(0, field.indexOf(':'));
    String reach =
        REACH.contains(" " + name + ":")
            ? REACH.replaceFirst(" " + name + ": (\\{n: 0.04\\}|[^,}]*)", " " + field)
            : REACH.substring(0, REACH.length() - 1) + ", " + field + "}";
    return ProjectText.POINTS
        + (name.equals("evaporation")
            ? field
            : "streams: {s: {from: fall, to: pond, reaches: [" + reach + "]}}")
        + "\n";
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "bank: 45 | bank: \"45\" is not possible; it must be 0 to 20: run over rise, 0 a wall, 1 is"
            + " 45 degrees",
        "bank: -1 | bank: \"-1\" is not possible; it must be 0 to 20: run over rise, 0 a wall, 1 is"
            + " 45 degrees",
        "bed: {n: 4} | n: \"4\" is not possible; it must be 0.005 to 0.5; usual are 0.012 for bare"
            + " liner, 0.03 for a clean bed, 0.04 for gravel and cobbles, 0.05 with large boulders",
        "bed: {n: 0.004} | n: \"0.004\" is not possible; it must be 0.005 to 0.5;",
        "bed: {stone: 60} | stone: \"60\" has no unit; write for example \"60 mm\" (in, mm, cm, ft,"
            + " m)",
        "bed: {stone: 4} | stone: \"4\" has no unit; write \"4 in\" or \"4 mm\" (in, mm, cm, ft,"
            + " m)",
        "bed: {stone: 4000} | stone: \"4000\" has no unit; write \"4000 in\" or \"4000 mm\" (in,"
            + " mm, cm, ft, m)",
        "bed: {stone: 60 ft} | stone: \"60 ft\" is not possible; it must be 1 mm to 1 m",
        "bed: {stone: 0.6 mm} | stone: \"0.6 mm\" is not possible; it must be 1 mm to 1 m",
        "gravel: {depth: 3} | gravel: depth: \"3\" has no unit; write \"3 in\" or \"3 mm\" (in, mm,"
            + " cm, ft, m)",
        "gravel: {depth: 3 in, voids: 0 %} | voids: \"0 %\" is not possible; it must be above 0 %"
            + " and below 100 %",
        "gravel: {depth: 3 in, voids: 100 %} | voids: \"100 %\" is not possible; it must be above 0"
            + " % and below 100 %",
        "liner edge: 5 | liner edge: \"5\" has no unit; write \"5 in\" or \"5 mm\" (in, mm, cm, ft,"
            + " m)",
        "evaporation: 51 mm/day | evaporation: \"51 mm/day\" is not possible; it must be 0 to 50"
            + " mm/day (1.9 in/day)",
        "evaporation: {rate: 6 in/day} | rate: \"6 in/day\" is not possible; it must be 0 to 50"
            + " mm/day (1.9 in/day)",
        "evaporation: {rate: 6 mm/day, splash: 120 %} | splash: \"120 %\" is not possible; it must"
            + " be 0 % to 100 %"
      })
  void aSlipIsReported(String field, String fault) {
    String shown = ProjectText.faultsOf(with(field));
    assertTrue(shown.contains(fault), shown);
    assertTrue(shown.lines().count() == 1, shown);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "bank: 0",
        "bank: 20",
        "bed: {n: 0.005}",
        "bed: {n: 0.5}",
        "bed: {stone: 1 mm}",
        "bed: {stone: 1 m}",
        "gravel: {depth: 3 in, voids: 1 %, drains: 100 %}",
        "gravel: {depth: 3 in, voids: 99 %, drains: 0 %}",
        "evaporation: 50 mm/day",
        "evaporation: {rate: 0 mm/day, splash: 100 %}"
      })
  void theEndsAreAllowed(String field) {
    assertDoesNotThrow(() -> ProjectText.read(with(field)));
  }
}
