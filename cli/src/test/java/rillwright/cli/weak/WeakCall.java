package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.command.Run;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What the program answered.
 *
 * @param status its exit status
 * @param out what it wrote
 * @param err what it said was wrong
 */
record WeakCall(int status, String out, String err) {
  /** An invented job that has a fall, a net, two gauges and a power curve. */
  static final String JOB = "../examples/weak-fall/fall.yaml";

  static WeakCall run(String... arguments) {
    Run run = Run.of(arguments);
    return new WeakCall(run.status(), run.out(), run.err());
  }

  /** "weak" about a job. */
  static WeakCall about(String job, String... more) {
    List<String> words = new ArrayList<>(List.of("weak", job));
    words.addAll(List.of(more));
    return run(words.toArray(new String[0]));
  }

  JsonNode json() {
    assertEquals("", err);
    return JsonMapper.shared().readTree(out);
  }

  /** What it wrote, in one line, so that no break of a line stands in the way. */
  String flat() {
    return out.replaceAll("\\s+", " ");
  }
}
