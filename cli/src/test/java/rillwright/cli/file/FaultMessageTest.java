package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said about points, lines and parts that are wrong, word for word. */
class FaultMessageTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "{kind: basin} | 3:6: point \"p\": \"level\" is missing; write for example \"level: 0 ft\"",
        "{kind: basin, level: 0} | 3:27: point \"p\": level: \"0\" has no unit; write \"0 in\" or"
            + " \"0 mm\" (in, mm, cm, ft, m)",
        "{kind: basin, level: 0 ft, levle: 0 ft} | 3:33: point \"p\": there is no field \"levle\";"
            + " did you mean \"level\"?",
        "{kind: basin, level: 0 ft, area: 5 m2, shape: []} | 3:52: point \"p\": shape: give either"
            + " an area or a shape, not both",
        "{kind: basin, level: -2 m, shape: [{level: -1 m, area: 3 m2}]} | 3:27: point \"p\": level:"
            + " the water stands below the lowest row of the basin's shape",
        "{kind: basin, level: [0 ft]} | 3:27: point \"p\": level: expected a length, found a list",
        "{kind: basin, level: } | 3:26: point \"p\": level: a value is missing here; expected a"
            + " length",
        "{kind: pool, level: 0 ft} | 3:13: point \"p\": kind: \"pool\" is not known; choose basin,"
            + " chamber, tee, fall, outlet",
        "{level: 0 ft} | 3:3: point \"p\": its kind is missing; choose basin, chamber, tee, fall,"
            + " outlet",
        "0 ft | 3:6: point \"p\": expected fields such as {kind: tee}, found \"0 ft\"",
        "{kind: chamber, floor: -1 m, intake: -2 m} | 3:43: point \"p\": intake: the intake is"
            + " below the floor; it must be at the floor or above",
        "{kind: chamber, floor: -1 m, intake: 2 m, top: 1 m} | 3:43: point \"p\": intake: the"
            + " intake is above the top; it must be below",
        "{kind: chamber, floor: -1 m, top: -2 m} | 3:40: point \"p\": top: the top must be above"
            + " the floor",
        "{kind: tee, draw: 3 ft} | 3:24: point \"p\": draw: \"3 ft\" is a length; expected a flow"
            + " (gph, gpm, imp gph, imp gpm, cfs, L/h, L/min, L/s, m3/h, m3/s)",
        "{kind: fall, crest: 4 ft, width: 0 in} | 3:39: point \"p\": width: \"0 in\" is not"
            + " possible; it must be greater than 0",
        "{kind: fall, crest: 4 ft} | 3:6: point \"p\": \"width\" is missing; write for example"
            + " \"width: 30 in\"",
        "{kind: fall, crest: 4 ft, width: 1 ft, lip: stoen} | 3:50: point \"p\": lip: \"stoen\" is"
            + " not known; did you mean \"stone\"? (metal, plastic, stone, broad, boulders)",
        "{kind: fall, crest: 4 ft, width: 1 ft, returns to: lake} | 3:57: point \"p\": returns to:"
            + " there is no basin \"lake\"; choose pond",
        "{kind: fall, crest: 4 ft, width: 1 ft, target: -5 gph} | 3:53: point \"p\": target: \"-5"
            + " gph\" is not possible; it must be 0 or more",
        "{kind: fall, crest: 4 ft, width: 1 ft, target: 0.6 in} | 3:53: point \"p\": target: a"
            + " depth over the crest is written \"target: {crest head: 0.6 in}\"",
        "{kind: fall, crest: 4 ft, width: 1 ft, target: 5 gph/m} | 3:53: point \"p\": target: \"5"
            + " gph/m\": \"gph/m\" is not a unit that is known; did you mean \"gph\"? (gph, gpm,"
            + " imp gph, imp gpm, cfs, L/h, L/min, L/s, m3/h, m3/s, gph/in, gph/ft, m3/h/m)",
        "{kind: fall, crest: 4 ft, width: 1 ft, weir: {shape: thin plate}} | 3:51: point \"p\":"
            + " weir: \"height\" is missing; write for example \"height: 8 in\"",
        "{kind: fall, crest: 4 ft, width: 3 ft, weir: {shape: thin plate, height: 8 in, channel"
            + " width: 2 ft}} | 3:100: point \"p\": weir: channel width: the channel must be at"
            + " least as wide as the weir in it",
        "{kind: fall, crest: 4 ft, width: 1 ft, weir: {shape: broad, angle: 90}} | 3:73: point"
            + " \"p\": weir: angle: only a weir of shape \"v notch\" has an angle",
        "{kind: fall, crest: 4 ft, width: 1 ft, weir: {}} | 3:51: point \"p\": weir: give either a"
            + " discharge coefficient or a shape (thin plate, broad, v notch)",
        "{kind: fall, crest: 4 ft, weir: {shape: v notch, angle: 180}} | 3:62: point \"p\": weir:"
            + " angle: \"180\" is not possible; it must be an angle of more than 0 and up to 179"
            + " degrees",
        "{kind: outlet, elevation: 1 m, nozzle: {diameter: 10 mm}} | 3:45: point \"p\": nozzle:"
            + " \"discharge coefficient\" is missing; write for example \"discharge coefficient:"
            + " 0.97\"",
        "{kind: outlet} | 3:6: point \"p\": \"elevation\" is missing; write for example"
            + " \"elevation: 4 ft\""
      })
  void pointsThatAreWrong(String point, String fault) {
    String text =
        "points:\n  pond: {kind: basin, level: 0 m}\n  p: "
            + point
            + "\nlines:\n  l: {from: pond, to: p, parts: [loss: {flow: 1 L/s, head: 1 m}]}\n";
    assertEquals("pond.yaml:" + fault, ProjectText.faultsOf(text));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "run: 38 | run: \"38\" has no unit; write for example \"38 ft\" (ft, in, m, cm, mm)",
        "run: 0 ft | run: \"0 ft\" is not possible; it must be greater than 0",
        "run: {} | run: \"length\" is missing; write for example \"length: 38 ft\"",
        "run: {length: 1 m, lenght: 2 m} | run: there is no field \"lenght\"; did you mean"
            + " \"length\"?",
        "run: {length: 1 m, roughness: 3 mm} | run: the roughness is more than 5 % of the inside"
            + " diameter, which no friction law covers",
        "run: {length: 1 m, hazen c: 150, factor: 0.02} | run: give only one of roughness, hazen c"
            + " and factor",
        "run: {length: 1 m, size: 2 in} | run: size: a size needs a material, for example"
            + " \"material: flexible PVC\"",
        "run: {length: 1 m, material: flexible PVC, size: 2 in, inside: 2 in} | run: inside: give"
            + " either a size or an inside diameter, not both",
        "run: {length: 1 m, material: flexible PCV, size: 2 in} | run: material: \"flexible PCV\""
            + " is not in the catalogue; did you mean \"flexible PVC\"? (\"rillwright catalogue"
            + " pipes\" lists all)",
        "run: {length: 1 m, material: flex PVC, size: 2 in} | run: material: \"flex PVC\" is not in"
            + " the catalogue; did you mean \"flexible PVC\"? (\"rillwright catalogue pipes\" lists"
            + " all)",
        "run: {length: 1 m, material: flexible PVC} | run: material: give the size too, or the"
            + " inside diameter",
        "run: {length: 1 m, material: PVC schedule 80, size: 1/0 in} | run: size: \"1/0 in\" is not"
            + " a size of PVC schedule 80 in the catalogue; did you mean \"1/2 in\" or \"1 in\" or"
            + " \"3/4 in\"?",
        "run: {length: 1 m, inside: 0 mm} | run: inside: \"0 mm\" is not possible; it must be an"
            + " inside diameter of 0.1 mm to 100 m",
        "fitting: {type: elbow} | fitting: type: \"elbow\" is not in the catalogue, and its k is"
            + " not given; did you mean \"elbow 90\" or \"elbow 45\" or \"elbow 90 threaded\"?"
            + " (\"rillwright catalogue fittings\" lists all)",
        "fitting: {type: 90 degree elbow} | fitting: type: \"90 degree elbow\" is not in the"
            + " catalogue, and its k is not given; did you mean \"elbow 90\" or \"elbow 90"
            + " threaded\" or \"long elbow 90 threaded\"? (\"rillwright catalogue fittings\" lists"
            + " all)",
        "fitting: {type: gizmo} | fitting: type: \"gizmo\" is not in the catalogue, and its k is"
            + " not given; choose elbow 90, sweep 90, elbow 45, mitre 90, return 180, tee run, tee"
            + " branch, wye 45, union, coupling, barbed coupler, barbed adapter \u2026;"
            + " \"rillwright catalogue fittings\" lists all",
        "fitting: {count: 2} | fitting: give its type, for example \"type: elbow 90\", or its k",
        "fitting: {k: -0.4} | fitting: k: \"-0.4\" is not possible; it must be 0 or more",
        "fitting: {k: 1, count: 1.5} | fitting: count: a count is a whole number",
        "fitting: {k: 1, count: 0} | fitting: count: \"0\" is not possible; it must be from 1 to"
            + " 1000",
        "fitting: {k: 1 ft} | fitting: k: \"1 ft\" has a unit; expected a plain number; write"
            + " \"1\"",
        "fitting: 3 | fitting: expected fields (type, k, count, material, size, inside), found"
            + " \"3\"; write \"fitting: {k: 3}\"",
        "valve: {type: ball, open: 60 %, k: 3} | valve: k: give either k or how far the valve is"
            + " open, not both",
        "valve: {type: ball} | valve: say how far it is open, for example \"open: 100 %\", or give"
            + " its k",
        "valve: {open: 60 %} | valve: its type is missing, for example \"type: ball\" (ball,"
            + " butterfly, gate)",
        "valve: {type: ball, open: 110 %} | valve: open: \"110 %\" is not possible; it must be 0 %"
            + " to 100 %",
        "valve: {type: ball, open: 0.6} | valve: open: \"0.6\" has no unit; write for example \"60"
            + " %\"",
        "valve: {k: 1, adjustable: maybe} | valve: adjustable: write yes or no, not \"maybe\"",
        "check valve: {} | check valve: give its type, for example \"type: swing\", or its k",
        "check valve: {k: 2, cracking head: -1 in} | check valve: cracking head: \"-1 in\" is not"
            + " possible; it must be 0 or more",
        "skimmer: {width: 1 ft} | skimmer: \"sill\" is missing; write for example \"sill: -5 in\"",
        "skimmer: {width: 1 ft, sill: 0 ft, clogged: 40} | skimmer: clogged: \"40\" has no unit;"
            + " write for example \"40 %\"",
        "filter: {clogged: 10 %} | filter: give its loss when clean either as one rating, for"
            + " example \"rating: {flow: 3000 gph, head: 4 ft}\", or as points",
        "filter: {rating: {flow: 1 L/s, head: 1 m, exponent: 3}} | filter: rating: exponent: \"3\""
            + " is not possible; it must be 1 to 2",
        "filter: {points: [{flow: 1 L/s, head: 1 m}]} | filter: points: these points are no"
            + " filter's: a filter needs losses at two different flows, or one rating",
        "filter: {points: [{flow: 1 L/s, head: 1 m}, {flow: 2 L/s, head: 9 m}]} | filter: points:"
            + " these points are no filter's: its loss rises faster than the square of the flow",
        "pump: demo 41 | pump: there is no pump \"demo 41\" in the section \"pumps\"; did you mean"
            + " \"demo 40\"?",
        "pump: sheets/tank-king.csv | pump: a data sheet gets a name in the section \"pumps\";"
            + " write there \"tank king: sheets/tank-king.csv\", and here \"pump: tank king\"",
        "pump: {model: demo 40, arranged: row} | pump: arranged: \"row\" is not known; choose"
            + " parallel, series",
        "pump: {model: demo 40, runs back: yes} | pump: runs back: say against which loss, for"
            + " example \"runs back: {k: 15}\"",
        "pump: {model: demo 40, speed: -10 %} | pump: speed: \"-10 %\" is not possible; it must be"
            + " 0 % to 200 %",
        "gauge: {name: G1} | gauge: \"elevation\" is missing; write for example \"elevation: 0"
            + " ft\"",
        "high point: 8 | high point: \"8\" has no unit; write for example \"8 ft\" (ft, in, m, cm,"
            + " mm)",
        "loss: {k: 1, flow: 1 L/s, head: 1 m} | loss: give either its k, or a flow and a head, or"
            + " points",
        "loss: {flow: 1 L/s, head: 1 m, inside: 2 in} | loss: inside: only a loss that is given by"
            + " its k has a bore",
        "loss: {points: [{flow: 0 L/s, head: 1 m}]} | loss: points 1: flow and head must both rise"
            + " from point to point, beginning at 0",
        "loss: {flow: 1 L/s, head: 0 m} | loss: head: \"0 m\" is not possible; it must be greater"
            + " than 0"
      })
  void partsThatAreWrong(String part, String fault) {
    String text =
        ProjectText.POINTS
            + "  line:\n"
            + "    from: pond\n"
            + "    to: low\n"
            + "    pipe: {inside: 50 mm, factor: 0.02}\n"
            + "    parts:\n"
            + "      - run: 1 m\n"
            + "      - "
            + part
            + "\npumps:\n  demo 40: pumps/demo-40.csv\n";
    String shown = ProjectText.faultsOf(text);
    assertEquals("line \"line\": " + renumbered(fault), shown.replaceFirst("^[^ ]*: ", ""));
    assertEquals("pond.yaml:18:", shown.replaceFirst("(:\\d+:).*", "$1"));
  }

  /** The part under test is the second run of its line if it is a run. */
  private static String renumbered(String fault) {
    return fault.replaceFirst("^run: ", "run 2: ");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "{to: low, parts: []} | 12:9: line \"line\": \"from\" is missing; write for example \"from:"
            + " pond\"",
        "{from: pond, to: lwo, parts: []} | 12:26: line \"line\": to: there is no point \"lwo\";"
            + " did you mean \"low\"?",
        "{from: pond, to: pond, parts: []} | 12:26: line \"line\": to: the line ends where it"
            + " begins",
        "{from: pond, to: low, parts: [run: 1 m]} | 12:44: line \"line\": run: its bore is not"
            + " known; give the line a pipe, or the run a material and size or an inside diameter",
        "{from: pond, to: low, pipe: {inside: 2 in}, parts: [run: 1 m]} | 12:66: line \"line\":"
            + " run: the friction of its wall is not known; give a material and size, or roughness,"
            + " hazen c or factor",
        "{from: pond, to: low, parts: [valve: {k: 1}]} | 12:46: line \"line\": valve: its bore is"
            + " not known; give the line a pipe, or write for example \"inside: 2.067 in\" here",
        "{from: pond, to: low, pipe: {material: flexible PVC, size: 2.25 in}, parts: [run: 1 m]} |"
            + " 12:68: line \"line\": pipe: size: \"2.25 in\" is not a size of flexible PVC in the"
            + " catalogue; the nearest are 2 in and 2-1/2 in",
        "{from: pond, to: low, parts: [{vlave: {k: 1}}]} | 12:40: line \"line\": there is no kind"
            + " of part \"vlave\"; did you mean \"valve\"?",
        "{from: pond, to: low, parts: [pump]} | 12:39: line \"line\": expected the kind of a part"
            + " and its fields, for example \"- run: 38 ft\", found \"pump\"",
        "{from: pond, to: low, parts: {run: 1 m}} | 12:38: line \"line\": parts: expected a list,"
            + " found a group of fields",
        "{from: low, to: split, parts: [], exit: {k: 1}, pipe: {inside: 2 in}} | 12:53: line"
            + " \"line\": exit: k: a line end at a tee has no loss of its own; write it as a"
            + " fitting, for example \"fitting: {type: tee branch}\"",
        "{from: chamber, to: low, parts: [{skimmer: {width: 1 ft, sill: 0 ft}}]} | 12:52: line"
            + " \"line\": skimmer: a skimmer's line must begin at a basin",
        "{from: pond, to: low, parts: []} | 12:3: line \"line\": nothing in this line takes any"
            + " head, so its flow is undetermined; write what it consists of, for example \"run: 3"
            + " ft\", or make its two ends one point",
        "{from: pond, to: low, pipe: {inside: 2 in}, entrance: {k: 0}, exit: {k: 0}, parts: [valve:"
            + " {k: 0}, check valve: {k: 0}]} | 12:3: line \"line\": nothing in this line takes any"
            + " head, so its flow is undetermined; write what it consists of, for example \"run: 3"
            + " ft\", or make its two ends one point",
        "{from: pond, to: low, parts: [gauge: {name: G, elevation: 0 m}, gauge: {name: G,"
            + " elevation: 1 m}]} | 12:73: line \"line\": gauge 2: name: the gauge in line 12 is"
            + " called \"G\" too; give each gauge its own name"
      })
  void linesThatAreWrong(String line, String fault) {
    assertEquals(
        "pond.yaml:" + fault, ProjectText.faultsOf(ProjectText.POINTS + "  line: " + line + "\n"));
  }
}
