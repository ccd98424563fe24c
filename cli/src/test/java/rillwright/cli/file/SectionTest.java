package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.file.site.Prices;
import rillwright.curves.sheet.fact.Price;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.solver.water.Water;
import rillwright.solver.water.WaterProperties;

/** The sections beside points and lines. */
class SectionTest {

  private static Project with(String section) {
    return ProjectText.read(ProjectText.POINTS + section + "\n");
  }

  @Test
  void withoutASectionTheUsualHolds() {
    Project project = with("");
    assertEquals("pond", project.title());
    assertEquals(Show.US, project.show());
    assertEquals(Water.at(20), project.network().water());
    assertEquals(0, project.network().siteElevationM());
    assertEquals(Optional.empty(), project.running().price());
  }

  @Test
  void waterByTemperatureOrByDensityAndViscosity() {
    assertEquals(Water.at(10), with("water: {temperature: 50 F}").network().water());
    assertEquals(
        new Water(998.2, 1.004e-6, WaterProperties.vapourPressurePa(20)),
        with("water: {density: 998.2 kg/m3, viscosity: 1.004e-6 m2/s}").network().water());
    assertEquals(Water.at(40), with("water: {temperature: 104 F}").network().water());
    assertEquals(Water.at(0), with("water: {temperature: 32 F}").network().water());
  }

  @Test
  void pricesAreBroughtToTheMetre() {
    Project project =
        with(
            "prices: {pipe: {flexible PVC 2 in: 0.3048 USD/ft}, fittings: {elbow 90 2 in: 3.10"
                + " USD}, trench: 6 USD/m}");
    Price pipe = project.prices().pipe().get("flexible PVC 2 in");
    assertEquals(1, pipe.amount(), 1e-12);
    assertEquals(new Price(3.1, "USD"), project.prices().fittings().get("elbow 90 2 in"));
    assertEquals(Optional.of(new Price(6, "USD")), project.prices().trench());
  }

  @Test
  void aPumpMayStandInTheFileWithItsFacts() {
    Project project =
        with(
            "pumps: {p: {points: [{flow: 0 gph, head: 31 ft, power: 420 W}, {flow: 3000 gph, head:"
                + " 5 psi, power: 500 W}], kind: submersible, price: 389 USD, min submergence: 8"
                + " in, variable speed: 40..100 %, solids: 1/2 in}}");
    SheetFacts facts = project.sheets().get("p").facts();
    assertEquals(Optional.of("submersible"), facts.kind());
    assertEquals(389, facts.price().orElseThrow().amount());
    assertEquals(0.2032, facts.needs().minSubmergenceM().orElseThrow(), 1e-12);
    assertEquals(0.4, facts.variableSpeed().orElseThrow().least(), 1e-12);
    assertEquals(0.0127, facts.solidsM().orElseThrow(), 1e-12);
    assertEquals(31 * 0.3048, project.sheets().get("p").curve().headAt(0), 1e-9);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "rillwright: 1 | 12:1: \"rillwright\" is here twice, first in line 1",
        "titel: x | 12:1: there is no field \"titel\"; did you mean \"site\" or \"title\"?",
        "show: metres | 12:7: show: \"metres\" is not known; did you mean \"metric\"?",
        "water: {temperature: 45 C} | 12:22: water: temperature: \"45 C\" is not possible; it must"
            + " be 32 F to 104 F (0 C to 40 C)",
        "water: {temperature: 20 C, density: 1000 kg/m3} | 12:8: water: give either a temperature"
            + " or density and viscosity, not both",
        "water: {density: 1000 kg/m3} | 12:8: water: \"viscosity\" is missing; write for example"
            + " \"viscosity: 1.004e-6 m2/s\"",
        "water: 62 F | 12:8: water: expected fields, for example \"water: {temperature: 62 F}\","
            + " found \"62 F\"",
        "site: {elevation: 420} | 12:19: site: elevation: \"420\" has no unit; write for example"
            + " \"420 ft\" (ft, in, m, cm, mm)",
        "running: {price: 0.17} | 12:18: running: price: \"0.17\" is not a price; write for example"
            + " \"0.17 USD/kWh\"",
        "running: {price: $0.17/kWh} | 12:18: running: price: \"$0.17/kWh\" is not a price; write"
            + " for example \"0.17 USD/kWh\"",
        "running: {price: 0,17 USD/kWh} | 12:18: running: price: the price \"0,17\" has a decimal"
            + " comma; write it with a point: \"0.17\", as in \"0.17 USD/kWh\"",
        "running: {hours: 25 h/day} | 12:18: running: hours: \"25 h/day\" is not possible; it must"
            + " be 0 to 24 h/day",
        "running: {days: 210} | 12:17: running: days: \"210\" has no unit; write for example \"210"
            + " days/year\"",
        "prices: {trench: 6 USD} | 12:18: prices: trench: \"6 USD\" does not say per which unit;"
            + " write for example \"0.17 USD/ft\"",
        "prices: {trench: 6 USD/ft, pipe: {flexible PVC 2 in: 4 EUR/m}} | 12:18: prices: trench:"
            + " \"6 USD/ft\" is in USD while prices before are in EUR; use one currency in a file",
        "prices: {pipe: {flexibel PVC 2 in: 4 USD/ft}} | 12:17: prices: pipe: \"flexibel PVC 2 in\""
            + " is no material and size of pipe that is known; did you mean \"flexible PVC 2 in\""
            + " or \"flexible PVC 1 in\" or \"flexible PVC 3 in\"?",
        "prices: {fittings: {elbo 90 2 in: 4 USD}} | 12:21: prices: fittings: \"elbo 90 2 in\" is"
            + " no type and size of a fitting that is known; did you mean \"elbow 90 2 in\" or"
            + " \"elbow 90 1 in\" or \"elbow 90 3 in\"?",
        "prices: {pipe: {flexible PVC 2 inn: 4 USD/ft}} | 12:17: prices: pipe: \"flexible PVC 2"
            + " inn\" is no material and size of pipe that is known; did you mean \"flexible PVC 2"
            + " in\" or \"flexible PVC 1 in\" or \"flexible PVC 3 in\"?",
        "pumps: {p: {points: [{flow: 0 gph, head: 3 ft}]}} | 12:21: pump \"p\": points: a pump's"
            + " curve needs two points or more, each with a flow and a head; here is only one",
        "pumps: {p: {points: [{flow: 0 gph, head: 3 ft}, {flow: 0 gph, head: 1 ft}]}} | 12:56: pump"
            + " \"p\": points 2: flow: \"0 gph\" is the same as \"0 gph\" in point 1; leave one of"
            + " the two out",
        "pumps: {p: {points: [{flow: 0 gph, head: 3 ft}, {flow: 9 gph, head: 3 ft}]}} | 12:69: pump"
            + " \"p\": points 2: head: \"3 ft\" is the last and is not below the first, \"3 ft\" in"
            + " point 1; a pump's head falls as its flow rises",
        "pumps: {p: [1]} | 12:12: pump \"p\": expected the path of its data sheet or {points:"
            + " [...]}, found a list",
        "pumps: {p: no-such.csv} | 12:12: pump \"p\":"
            + " src/test/resources/rillwright/cli/file/no-such.csv: there is no such file",
        "pumps: {to be chosen: {points: [{flow: 0 gph, head: 3 ft}, {flow: 9 gph, head: 1 ft}]}} |"
            + " 12:9: pump \"to be chosen\": give the pump another name",
        "streams: {s: {from: fall, to: pond, reaches: [{step: {height: 1 ft, width: 2 ft}},"
            + " {length: 9 ft, drop: 1 ft, width: 2 ft, bed: coble}]}} | 12:129: stream \"s\":"
            + " reach 2: bed: \"coble\" is not in the catalogue; did you mean \"cobble\"?"
            + " (\"rillwright catalogue beds\" lists all)",
        "streams: {s: {from: fall, to: pond, reaches: [{length: 9 ft, drop: 1 ft, width: 2 ft, bed:"
            + " sand}]}} | 12:92: stream \"s\": reach 1: bed: \"sand\" is not in the catalogue;"
            + " choose clean straight, stones and weeds, winding pools and shoals, winding stones"
            + " and weeds, mountain gravel and cobble, mountain large boulders, concrete, mortared"
            + " flagstone, mortared rubble, planted gravel, bare liner, pea gravel …; \"rillwright"
            + " catalogue beds\" lists all",
        "streams: {s: {from: fall, to: pond, reaches: [{length: 9 ft, drop: 1 ft, width: 2 ft, bed:"
            + " {rubble: 60 mm}}]}} | 12:93: stream \"s\": reach 1: bed: there is no field"
            + " \"rubble\"; choose stone, n",
        "streams: {s: {from: fall, to: pond, reaches: [{length: 9 ft, drop: 1 ft, width: 2 ft, bed:"
            + " cobble, gravel: 3 in}]}} | 12:108: stream \"s\": reach 1: gravel: expected fields,"
            + " for example \"gravel: {depth: 3 in}\", found \"3 in\"",
        "streams: {s: {from: fall, to: pond, reaches: [{step: {height: 1 ft, width: 2 ft}, pool:"
            + " {area: 9 ft2, depth: 9 in, crest width: 2 ft}}]}} | 12:47: stream \"s\": reach 1: a"
            + " row says one thing: a step, a pool or a reach; give each a row of its own",
        "streams: {s: {from: fall, to: pond, reaches: [{length: 9 ft, step: {height: 1 ft, width: 2"
            + " ft}}]}} | 12:47: stream \"s\": reach 1: a row says one thing: a step, a pool or a"
            + " reach; give each a row of its own",
        "streams: {s: {from: fall, to: pond, reaches: [{step: 1 ft}]}} | 12:54: stream \"s\": reach"
            + " 1: step: expected fields, for example \"step: {height: 1.4 ft, width: 30 in}\","
            + " found \"1 ft\"",
        "streams: {s: {from: fal, to: pond, reaches: [{step: {height: 1 ft, width: 2 ft}}]}} |"
            + " 12:21: stream \"s\": from: there is no point \"fal\"; did you mean \"fall\"?",
        "readings: [{at: fall, flow: 5 psi, within: 7 %}] | 12:29: readings 1: flow: \"5 psi\" is a"
            + " pressure; expected a flow (gph, gpm, imp gph, imp gpm, cfs, L/h, L/min, L/s, m3/h,"
            + " m3/s)",
        "readings: [{at: fall, bucket: 5 gal}] | 12:12: readings 1: \"time\" is missing; write for"
            + " example \"time: 6 s\"",
        "readings: [{gauge: G9, pressure: 3 psi}] | 12:20: readings 1: gauge: there is no \"G9\"",
        "evaporation: 5 mm | 12:14: evaporation: \"5 mm\" is a length; expected a speed (m/s, ft/s,"
            + " mph, km/h, mm/day, in/day)",
        "signs: 5 | 12:8: signs: expected a list, found \"5\""
      })
  void sectionsThatAreWrong(String section, String fault) {
    assertEquals("pond.yaml:" + fault, ProjectText.faultsOf(ProjectText.POINTS + section + "\n"));
  }

  @Test
  void sectionsOfOtherStudiesAreTakenAsTheyAre() {
    Project project =
        with(
            """
            evaporation: 5 mm/day
            signs: [for weeks, no bubbles]
            conditions: {autumn: {lines: {to the fall: {run: {length: 2 m}}}}}
            readings: [{at: fall, flow: 900 gph, within: 7 %, when: running}]
            """);
    assertTrue(project.tree().find("conditions").isPresent());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "pipe: {brass 2 in: 4 USD/ft}",
        "pipe: {flexible PVC 2-1/4 in: 4 USD/ft}",
        "fittings: {flange 2 in: 4 USD}",
        "fittings: {elbow 90 22 mm: 4 USD}"
      })
  void aPriceListMayHoldMoreThanIsKnown(String prices) {
    Prices read = with("prices: {" + prices + "}").prices();
    assertEquals(1, read.pipe().size() + read.fittings().size());
  }

  @Test
  void anotherVersionOfTheFormatIsNotRead() {
    assertEquals(
        "pond.yaml:1:13: rillwright: \"2\" is not possible; it must be 1, the version of the format"
            + " that this program reads",
        ProjectText.faultsOf(ProjectText.POINTS.replace("rillwright: 1", "rillwright: 2")));
  }

  @Test
  void pointsAndLinesAreNeeded() {
    assertEquals(
        List.of("points", "lines"),
        ProjectText.faultsOf("title: x\n")
            .lines()
            .map(
                line ->
                    line.replaceFirst("pond.yaml:1:1: ([a-z]+): this section is missing.*", "$1"))
            .toList());
  }

  @Test
  void readingsAloneAreNoProject() {
    assertEquals(
        "pond.yaml:2:3: readings: this file holds readings, and neither points nor lines; name the"
            + " project's file and give this one by --readings: \"rillwright weak PROJECT"
            + " --readings THIS-FILE\"",
        ProjectText.faultsOf("readings:\n  - {at: fall, bucket: 5 gal, time: 8 s}\n"));
  }

  @Test
  void aFallThatNoLineReachesIsWrongAndALoneBasinIsNot() {
    assertEquals(
        "pond.yaml:9:3: point \"dry\": no line ends at this fall, so no water can reach it",
        ProjectText.faultsOf(
            ProjectText.POINTS.replace(
                "lines:", "  dry: {kind: fall, crest: 1 m, width: 1 m}\nlines:")));
    assertEquals(
        List.of(
            "point \"chamber\": no line ends at this chamber",
            "point \"split\": no line ends at this tee"),
        with("").notes());
  }

  @Test
  void aCheckValveThatOnlyCracksTakesHead() {
    Project project =
        ProjectText.withLine(
            "{from: split, to: chamber, pipe: {inside: 2 in}, exit: {k: 0}, parts: [check valve:"
                + " {k: 0, cracking head: 6 in}]}");
    assertEquals(1, ProjectText.lineOf(project).parts().size());
  }
}
