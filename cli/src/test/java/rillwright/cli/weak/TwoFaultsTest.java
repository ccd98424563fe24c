package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * A clogged net and a fouled pipe at once: what would be read is what "solve" gives for the job
 * with both written into its file, exactly. Fifteen pairs, of which twelve at least must be named.
 */
class TwoFaultsTest {
  private static final Path JOB =
      Path.of("src/test/resources/rillwright/cli/weak/service-call.yaml");

  @TempDir private Path folder;

  /** The call to the job with a share of the net clogged and a share of the bore left. */
  private InventedCall call(double clogged, double bore) throws IOException {
    String job = Files.readString(JOB);
    String file =
        job.replace("exponent: 2}}", "exponent: 2}, clogged: " + 100 * clogged + " %}")
            .replace(
                "inside: 52 mm, roughness: 0.01 mm",
                "inside: " + 52 * bore + " mm, roughness: 1 mm");
    assertTrue(!file.equals(job), "changed");
    Path found = Files.writeString(folder.resolve("found.yaml"), file);
    return InventedCall.found(JOB.toString(), folder, found.toString())
        .flow("fall")
        .crestHead("fall")
        .gauge("supply", "G1")
        .gauge("supply", "G2")
        .level("chamber")
        .power("supply");
  }

  private static Set<String> names(JsonNode pair) {
    return Set.of(
        pair.get("causes").get(0).get("cause").asString(),
        pair.get("causes").get(1).get("cause").asString());
  }

  private static final Set<String> BOTH = Set.of("net clogged", "pipe fouled");

  @Test
  void aNetAndAPipeAreNamed() throws IOException {
    List<String> missed = new ArrayList<>();
    int named = 0;
    int inTheHeadline = 0;
    for (double clogged : new double[] {0.80, 0.86, 0.90, 0.93, 0.95}) {
      for (double bore : new double[] {0.70, 0.77, 0.84}) {
        JsonNode answer = call(clogged, bore).json();
        boolean listed = false;
        for (JsonNode pair : answer.get("pairs")) {
          listed |= names(pair).equals(BOTH);
        }
        named += listed ? 1 : 0;
        boolean first = listed && names(answer.get("pairs").get(0)).equals(BOTH);
        inTheHeadline += first && answer.get("pairsLead").asBoolean() ? 1 : 0;
        if (!listed) {
          missed.add(clogged + " " + bore);
        }
      }
    }
    assertTrue(named >= 12, named + " of 15, not " + missed);
    assertTrue(inTheHeadline >= 8, inTheHeadline + " of 15 lead");
  }

  /** The headline names both with their sizes, and a next reading has a column for the pair. */
  @Test
  void theHeadlineNamesBoth() throws IOException {
    String text = call(0.93, 0.77).ask().flat();
    assertTrue(
        text.matches(
            ".*two faults at once: [a-z0-9 ]+ %[^.]*(that|:) the (net|pipe)[^.]* and the .*"),
        text);
    assertTrue(text.matches(".*9[0-9] % clogged.*") && text.contains("% of its bore left"), text);
    assertTrue(text.contains("6 readings seldom settle a pair"), text);
  }

  /** A single fault stays one: no pair leads where one explains all. */
  @Test
  void oneFaultStaysOne() throws IOException {
    JsonNode answer = call(0, 0.77).json();
    assertEquals("pipe fouled at supply", InventedCall.first(answer));
    assertFalse(answer.get("pairsLead").asBoolean(), answer.get("pairs").toString());
  }
}
