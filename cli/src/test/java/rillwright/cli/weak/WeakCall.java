package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import rillwright.cli.Main;
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
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Main.commandLine()
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(arguments);
    return new WeakCall(status, out.toString(), err.toString());
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
