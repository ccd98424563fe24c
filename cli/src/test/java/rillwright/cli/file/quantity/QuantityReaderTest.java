package rillwright.cli.file.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityReaderTest {
  private static final double WATER = 1000;

  private static final Map<String, Measure> MEASURES =
      Map.ofEntries(
          Map.entry("length", Measure.LENGTH),
          Map.entry("small", Measure.SMALL_LENGTH),
          Map.entry("fine", Measure.FINE_LENGTH),
          Map.entry("bank", Measure.BANK),
          Map.entry("n", Measure.MANNING_N),
          Map.entry("flow", Measure.FLOW),
          Map.entry("flow per width", Measure.FLOW_PER_WIDTH),
          Map.entry("target", Measure.either(Measure.FLOW, Measure.FLOW_PER_WIDTH)),
          Map.entry("pressure", Measure.PRESSURE),
          Map.entry("head", Measure.headIn(WATER)),
          Map.entry("area", Measure.AREA),
          Map.entry("volume", Measure.VOLUME),
          Map.entry("power", Measure.POWER),
          Map.entry("time", Measure.TIME),
          Map.entry("speed", Measure.SPEED),
          Map.entry("density", Measure.DENSITY),
          Map.entry("viscosity", Measure.KINEMATIC_VISCOSITY),
          Map.entry("share", Measure.SHARE),
          Map.entry("temperature", Measure.TEMPERATURE),
          Map.entry("hours", Measure.HOURS_PER_DAY),
          Map.entry("days", Measure.DAYS_PER_YEAR),
          Map.entry("angle", Measure.ANGLE),
          Map.entry("count", Measure.COUNT),
          Map.entry("number", Measure.NUMBER));

  private static double read(String measure, String text) throws NotAQuantity {
    return QuantityReader.read(text, MEASURES.get(measure), Range.ANY).middle();
  }

  // The values of units are those that the format fixes: ft 0.3048 m, US gallon 3.785411784 L,
  // imperial gallon 4.54609 L, psi 6894.757293168361 Pa, hp 745.6998715822702 W.
  @ParameterizedTest(name = "{1} is {2}")
  @CsvSource({
    "length, 38 ft, 11.5824",
    "length, 38ft, 11.5824",
    "length, 8 feet, 2.4384",
    "length, 1 foot 6 inches, 0.4572",
    "length, 2.5 metres, 2.5",
    "volume, 20 litres, 0.02",
    "length, ' 38   ft ', 11.5824",
    "length, +38 ft, 11.5824",
    "length, .5 in, 0.0127",
    "length, 0.5 in, 0.0127",
    "length, 3/4 in, 0.01905",
    "length, 1-1/2 in, 0.0381",
    "length, 1 1/2 in, 0.0381",
    "length, 1-1/2in, 0.0381",
    "length, 1 - 1/2 in, 0.0381",
    "length, -1-1/2 in, -0.0381",
    "length, 7 ft 3 in, 2.2098",
    "length, 7ft3in, 2.2098",
    "length, 7 ft 3-1/2 in, 2.2225",
    "length, 7 ft 3 1/2 in, 2.2225",
    "length, -1 ft 6 in, -0.4572",
    "length, - 1 ft 6 in, -0.4572",
    "length, \u22121 ft 6 in, -0.4572",
    "length, 4', 1.2192",
    "length, '22\"', 0.5588",
    "length, 5' 6\", 1.6764",
    "length, 5'6\", 1.6764",
    "length, 5' 6-1/2\", 1.6891",
    "length, -1' 6\", -0.4572",
    "length, 5 ft 6\", 1.6764",
    "small, 22\", 0.5588",
    "fine, 1/4\", 0.00635",
    "head, 10', 3.048",
    "length, 1 m 20 cm, 1.2",
    "length, 1 m 20 cm 5 mm, 1.205",
    "length, -5 in, -0.127",
    "length, 1e1 m, 10",
    "length, 1E+1 m, 10",
    "length, -0 ft, 0",
    "length, 0 ft, 0",
    "length, 1. m, 1",
    "flow, 3600 gph, 0.003785411784",
    "flow, 60 gpm, 0.003785411784",
    "flow, 3600 imp gph, 0.00454609",
    "flow, 60 imp  gpm, 0.00454609",
    "flow, 1 cfs, 0.028316846592",
    "flow, 3600 L/h, 0.001",
    "flow, 60 l/min, 0.001",
    "flow, 1 L/s, 0.001",
    "flow, 1.5 m3/h, 0.000416666666666667",
    "flow, 1.5 m³/h, 0.000416666666666667",
    "flow, 2 m3/s, 2",
    "flow per width, 120 gph/in, 0.00496773200",
    "flow per width, 1500 gph/ft, 0.00517472083333333",
    "flow per width, 36 m3/h/m, 0.01",
    "target, 3600 gph, 0.003785411784",
    "target, 36 m3/h/m, 0.01",
    "pressure, 1 psi, 6894.757293168361",
    "pressure, 5.8 bar, 580000",
    "pressure, -3 kPa, -3000",
    "head, 10 ft, 3.048",
    "head, 1 bar, 10.1971621297793",
    "head, 1 psi, 0.703069579639159",
    "area, 90 ft2, 8.3612736",
    "area, 2 m², 2",
    "volume, 5 gal, 0.01892705892",
    "volume, 20 L, 0.02",
    "power, 420 W, 420",
    "power, 1/2 hp, 372.8499357911351",
    "power, 0.42 kW, 420",
    "time, 6 s, 6",
    "speed, 86.4 mm/day, 0.000001",
    "speed, 10 mph, 4.4704",
    "density, 998.2 kg/m3, 998.2",
    "viscosity, 1.004e-6 m2/s, 0.000001004",
    "share, 60 %, 0.6",
    "share, 60%, 0.6",
    "temperature, 62 F, 16.6666666666667",
    "temperature, 20 C, 20",
    "temperature, 68 °F, 20",
    "temperature, -4 F, -20",
    "hours, 24 h/day, 24",
    "days, 210 days/year, 210",
    "angle, 90, 90",
    "angle, 90 deg, 90",
    "angle, 90°, 90",
    "number, 0.5, 0.5",
    "number, .5, 0.5",
    "number, 3/4, 0.75",
    "number, 1e-3, 0.001"
  })
  void readsWhatPeopleWrite(String measure, String text, double expected) throws NotAQuantity {
    assertEquals(expected, read(measure, text), 1e-9 * Math.max(1, Math.abs(expected)));
  }

  @ParameterizedTest(name = "{1}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "length | 38 | \"38\" has no unit; write for example \"38 ft\" (ft, in, m, cm, mm)",
        "flow | 3600 | \"3600\" has no unit; write for example \"3600 gph\" (gph, gpm, imp gph, imp"
            + " gpm, cfs, L/h, L/min, L/s, m3/h, m3/s)",
        "share | 0.6 | \"0.6\" has no unit; write for example \"60 %\"",
        "share | 60 | \"60\" has no unit; write for example \"60 %\"",
        "head | 3 | \"3\" has no unit; write for example \"3 ft\" (ft, in, m, cm, mm, psi, kPa,"
            + " bar)",
        "length | 38 gph | \"38 gph\" is a flow; expected a length (ft, in, m, cm, mm)",
        "length | 3 psi | \"3 psi\" is a pressure; expected a length (ft, in, m, cm, mm)",
        "flow | 20 C | \"20 C\" is a temperature; expected a flow (gph, gpm, imp gph, imp gpm,"
            + " cfs, L/h, L/min, L/s, m3/h, m3/s)",
        "length | 38 Feet | \"38 Feet\": \"Feet\" is not a unit that is known; did you mean \"ft\"?"
            + " (ft, in, m, cm, mm)",
        "length | 7' 3'' | \"7' 3''\" is written \"7 ft 3 in\" here",
        "length | 7 ft 3 | \"7 ft 3\" is written \"7 ft 3 in\" here",
        "length | 3 in 7 ft | \"3 in 7 ft\" adds up oddly; write the larger unit first: \"7 ft 3"
            + " in\"",
        "flow | 20 gpf | \"20 gpf\": \"gpf\" is not a unit that is known; did you mean \"gph\"?"
            + " (gph, gpm, imp gph, imp gpm, cfs, L/h, L/min, L/s, m3/h, m3/s)",
        "flow | 20 GPH | \"20 GPH\": \"GPH\" is not a unit that is known; did you mean \"gph\"?"
            + " (gph, gpm, imp gph, imp gpm, cfs, L/h, L/min, L/s, m3/h, m3/s)",
        "length | 7,5 ft | \"7,5 ft\" has a decimal comma; write it with a point: \"7.5 ft\"",
        "flow | 3,600 gph | \"3,600 gph\" has a comma in its number; write \"3600 gph\" if the"
            + " comma parts thousands, \"3.600 gph\" if it is a decimal comma",
        "flow | 3 600 gph | \"3 600 gph\" has a mark between thousands; write \"3600 gph\"",
        "flow | 3'600 gph | \"3'600 gph\" has a mark between thousands; write \"3600 gph\"",
        "flow | 3_600 gph | \"3_600 gph\" has a mark between thousands; write \"3600 gph\"",
        "length | NaN | \"NaN\" is not a usable value; write a number with its unit (ft, in, m, cm,"
            + " mm)",
        "length | .inf | \".inf\" is not a usable value; write a number with its unit (ft, in, m,"
            + " cm, mm)",
        "length | -Infinity m | \"-Infinity m\" is not a usable value; write a number with its unit"
            + " (ft, in, m, cm, mm)",
        "length | 1e400 ft | \"1e400 ft\" is too large to be real",
        "length | 1e10 m | \"1e10 m\" is too large to be real",
        "length | 1e-300 m | \"1e-300 m\" is too small to be real",
        "length | 1/0 ft | \"1/0 ft\" divides by 0; write another number",
        "length | 0/0 ft | \"0/0 ft\" divides by 0; write another number",
        "length | 3-4 in | \"3-4 in\" is written \"3 in .. 4 in\" here",
        "length | about 3 in | \"about 3 in\" is not a quantity; write a number with its unit (ft,"
            + " in, m, cm, mm)",
        "length | '' | a value is missing here; write a number with its unit (ft, in, m, cm, mm)",
        "number | 0.5 m | \"0.5 m\" has a unit; expected a plain number; write \"0.5\"",
        "number | 5 pieces | \"5 pieces\" is not a number; write \"5\" alone",
        "number | 60 % | \"60 %\" has a unit; expected a plain number; write a plain number, for"
            + " example 1.5",
        "number | 1:1.5 | \"1:1.5\" is not a number; write a plain number, for example 1.5",
        "angle | right | \"right\" is not a number; write an angle in degrees, for example 90",
        "bank | 45 deg | \"45 deg\" is not a number; a bank is run over rise: 0 is a wall, 1 is 45"
            + " degrees, 1.5 goes 1.5 across for 1 up",
        "bank | 45° | \"45°\" is not a number; a bank is run over rise: 0 is a wall, 1 is 45"
            + " degrees, 1.5 goes 1.5 across for 1 up",
        "bank | 1:1.5 | \"1:1.5\" is not a number; a bank is run over rise: 0 is a wall, 1 is 45"
            + " degrees, 1.5 goes 1.5 across for 1 up",
        "bank | 50 % | \"50 %\" has a unit; expected a plain number; a bank is run over rise: 0 is"
            + " a wall, 1 is 45 degrees, 1.5 goes 1.5 across for 1 up",
        "n | 4 % | \"4 %\" has a unit; expected a plain number; Manning's n is a number such as"
            + " 0.04",
        "n | rough | \"rough\" is not a number; write a plain number, for example 0.04",
        "small | 60 | \"60\" has no unit; write \"60 in\" or \"60 mm\" (in, mm, cm, ft, m)",
        "fine | 0.02 | \"0.02\" has no unit; write for example \"0.02 mm\" (mm, in, cm, ft, m)",
        "number | two | \"two\" is written \"2\" here",
        "number | 1,5 | \"1,5\" has a decimal comma; write it with a point: \"1.5\"",
        "number | 1_000 | \"1_000\" has a mark between thousands; write \"1000\"",
        "number | 0x10 | \"0x10\" is not a number; write a plain number, for example 1.5",
        "days | 210 days | \"210 days\" is written \"210 days/year\" here",
        "temperature | 62 K | \"62 K\": \"K\" is not a unit that is known; choose F, C"
      })
  void answersWhatIsWrong(String measure, String text, String message) {
    NotAQuantity answer = assertThrows(NotAQuantity.class, () -> read(measure, text));
    assertEquals(message, answer.getMessage());
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "-30 in, must be greater than 0",
    "0 in, must be greater than 0",
    "-0 in, must be greater than 0"
  })
  void refusesWhatIsOutOfRange(String text, String words) {
    NotAQuantity answer =
        assertThrows(
            NotAQuantity.class, () -> QuantityReader.read(text, Measure.LENGTH, Range.POSITIVE));
    assertEquals("\"" + text + "\" is not possible; it " + words, answer.getMessage());
  }

  @Test
  void sharesGoFromNothingToAll() throws NotAQuantity {
    assertEquals(1, QuantityReader.read("100 %", Measure.SHARE, Range.SHARE).middle());
    assertEquals(0, QuantityReader.read("0 %", Measure.SHARE, Range.SHARE).middle());
    for (String text : new String[] {"101 %", "-1 %"}) {
      assertThrows(
          NotAQuantity.class, () -> QuantityReader.read(text, Measure.SHARE, Range.SHARE), text);
    }
  }

  @Test
  void tellsFlowsPerWidthFromFlows() {
    assertTrue(QuantityReader.fits("85 gph/in", Measure.FLOW_PER_WIDTH));
    assertFalse(QuantityReader.fits("85 gph", Measure.FLOW_PER_WIDTH));
  }

  @Test
  void anEndlessTextIsRefusedAtOnce() {
    String text = "1".repeat(900_000) + " ft";
    NotAQuantity answer =
        assertThrows(
            NotAQuantity.class, () -> QuantityReader.read(text, Measure.LENGTH, Range.ANY));
    assertTrue(answer.getMessage().endsWith("is too long to be a quantity"));
  }
}
