package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.JsonNode;

/**
 * A service call to a job, as somebody met it: the job is solved with what is really wrong written
 * into its file ("--set", "solve"), and what would be read there is read back into the file as it
 * was.
 */
final class InventedCall {
  private final Path folder;
  private final String job;
  private final JsonNode found;
  private final List<String> readings = new ArrayList<>();
  private final List<String> signs = new ArrayList<>();

  private InventedCall(Path folder, String job, JsonNode found) {
    this.folder = folder;
    this.job = job;
    this.found = found;
  }

  /** A call to a job with changes as on the command line. */
  static InventedCall to(String job, Path folder, String... changes) {
    List<String> words = new ArrayList<>(List.of("solve", job, "--format", "json"));
    for (String change : changes) {
      words.addAll(List.of("--set", change));
    }
    return new InventedCall(folder, job, WeakCall.run(words.toArray(new String[0])).json());
  }

  /** A call to a job that another file describes as it was found. */
  static InventedCall found(String job, Path folder, String found) {
    return new InventedCall(folder, job, WeakCall.run("solve", found, "--format", "json").json());
  }

  /** What is found there, as "solve" prints it. */
  JsonNode found() {
    return found;
  }

  /** Reads what flows over a fall. */
  InventedCall flow(String fall) {
    double flow = found.get("points").get(fall).get("flowM3PerS").asDouble();
    return reading("at: %s, flow: %.9f m3/s, within: 5 %%", fall, flow);
  }

  /** Reads the head over a fall's crest. */
  InventedCall crestHead(String fall) {
    double head = found.get("points").get(fall).get("crestHeadM").asDouble();
    return reading("at: %s, crest head: %.6f m, within: 2 mm", fall, head);
  }

  /** Reads the level of a chamber. */
  InventedCall level(String chamber) {
    double level = found.get("points").get(chamber).get("headM").asDouble();
    return reading("at: %s, level: %.6f m, within: 13 mm", chamber, level);
  }

  /** Reads a gauge in a line. */
  InventedCall gauge(String line, String gauge) {
    for (JsonNode part : found.get("lines").get(line).get("parts")) {
      if (part.has("name") && part.get("name").asString().equals(gauge)) {
        double pressure = part.get("pressurePa").asDouble() / 1000;
        return reading("gauge: %s, pressure: %.6f kPa, within: 1.7 kPa", gauge, pressure);
      }
    }
    throw new IllegalArgumentException("no gauge " + gauge);
  }

  /** Reads the power of a line's pump. */
  InventedCall power(String line) {
    return reading("pump: %s, power: %.4f W, within: 5 %%", line, powerW(line));
  }

  /** The power of a line's pump, W. */
  double powerW(String line) {
    for (JsonNode part : found.get("lines").get(line).get("parts")) {
      if (part.get("part").asString().equals("pump")) {
        return part.get("powerW").asDouble();
      }
    }
    throw new IllegalArgumentException("no pump in " + line);
  }

  /** Reads something else. */
  InventedCall reading(String format, Object... values) {
    readings.add("  - {" + String.format(Locale.ROOT, format, values) + "}\n");
    return this;
  }

  /** Sees a sign. */
  InventedCall sign(String sign) {
    signs.add(sign);
    return this;
  }

  /** Asks "weak" about the job as its file has it. */
  WeakCall ask(String... more) throws IOException {
    Path file = folder.resolve("visit.yaml");
    Files.writeString(file, "readings:\n" + String.join("", readings) + "signs: " + signs + "\n");
    List<String> words = new ArrayList<>(List.of("--readings", file.toString()));
    words.addAll(List.of(more));
    WeakCall call = WeakCall.about(job, words.toArray(new String[0]));
    assertEquals(0, call.status(), call.err());
    return call;
  }

  /** The same for programs. */
  JsonNode json() throws IOException {
    return ask("--format", "json").json();
  }

  /** How likely a cause is at a place, of all causes' 1. */
  static double probability(JsonNode answer, String cause, String at) {
    double sum = 0;
    for (JsonNode one : answer.get("causes")) {
      if (one.get("cause").asString().equals(cause) && one.get("at").asString("").equals(at)) {
        sum += one.get("probability").asDouble();
      }
    }
    return sum;
  }

  /** The likeliest cause and its place. */
  static String first(JsonNode answer) {
    JsonNode first = answer.get("causes").get(0);
    return first.get("cause").asString() + " at " + first.get("at").asString("no place");
  }
}
