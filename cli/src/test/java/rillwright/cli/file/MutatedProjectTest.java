package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.job.PhotoFolder;
import rillwright.cli.file.pump.FolderSheets;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;

/** Whatever a file holds, a project or plain sentences come out of it, and soon. */
class MutatedProjectTest {
  private static final int PROJECTS_A_SEED = 1500;
  private static final List<String> TOKENS =
      List.of(
          "1e400",
          "-0",
          "NaN",
          ".inf",
          "1e-300",
          "1e308 ft",
          "-1e9 m",
          "0 gph",
          "1e9 gph",
          "0 %",
          "100 %",
          "-5 in",
          "1/0 in",
          "±",
          "..",
          "3 ft ± 5 in",
          "1 ft .. 2 ft",
          "\u001b[31m",
          "\u202e",
          "\u0000",
          "\uFEFF",
          "null",
          "~",
          "yes",
          "{}",
          "[]",
          "{k: 1}",
          "[1, 2]",
          "&x",
          "*x",
          "!!int",
          "|",
          ">",
          "---",
          "...",
          "? ",
          ": ",
          "- ",
          "\t",
          "\n",
          "\r",
          "#",
          "\"",
          "'",
          "to be chosen",
          "pond",
          "valve",
          "run",
          "skimmer",
          "kind: basin",
          "psi",
          "m3/h",
          "{inside: 1e-4 m, factor: 10}",
          "9".repeat(2000),
          "[".repeat(50),
          "{a: ".repeat(50));

  private final List<String> texts = texts();

  private static List<String> texts() {
    try {
      String example = Files.readString(ProjectText.FOLDER.resolve("demo-30.yaml"));
      String json =
          """
          {"rillwright": 1, "points": {"pond": {"kind": "basin", "level": "0 m"},
           "fall": {"kind": "fall", "crest": "1.2 m", "width": "60 cm",
                    "weir": {"shape": "thin plate", "height": "8 in"}}},
           "lines": {"supply": {"from": "pond", "to": "fall", "entrance": {"k": 0.3},
            "pipe": {"material": "flexible PVC", "size": "2 in"},
            "parts": [{"pump": {"model": "p", "runs back": {"k": 3}}}, {"run": "12 m"},
             {"filter": {"points": [{"flow": "1 L/s", "head": "1 m"},
                                    {"flow": "2 L/s", "head": "3 psi"}]}},
             {"loss": {"points": [{"flow": "1 L/s", "head": "1 m"}]}}]}},
           "pumps": {"p": {"points": [{"flow": "0 L/s", "head": "7 m"},
                                      {"flow": "5 L/s", "head": "0 m"}]}}}
          """;
      return List.of(example, json, ProjectText.POINTS);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void onlyProjectsAndSentencesComeOut(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int[] read = {0};
    assertTimeoutPreemptively(
        Duration.ofMinutes(2),
        () -> {
          for (int i = 0; i < PROJECTS_A_SEED; i++) {
            int chosen = random.nextInt(texts.size());
            byte[] mutated = mutated(texts.get(chosen), random);
            String name = chosen == 1 ? "p.json" : "p.yaml";
            read[0] += read(name, mutated, "seed " + seed + ", project " + i) ? 1 : 0;
          }
        },
        "seed " + seed);
    // Else the mutations destroy everything and nothing behind the parser is tried.
    assertTrue(read[0] > PROJECTS_A_SEED / 25, read[0] + " projects read, seed " + seed);
    assertFalse(read[0] > PROJECTS_A_SEED * 19 / 20, read[0] + " projects read, seed " + seed);
  }

  private static boolean read(String name, byte[] content, String which) {
    try {
      new ProjectMapping(
              Catalogue.standard(),
              new FolderSheets(ProjectText.FOLDER),
              new PhotoFolder(ProjectText.FOLDER),
              name)
          .map(TreeReader.read(SourceText.of(name, content)), List.of());
      return true;
    } catch (InvalidInput shown) {
      assertAll(shown.faults().stream().map(fault -> () -> assertPlain(fault, which)));
      return false;
    } catch (RuntimeException | StackOverflowError defect) {
      return fail(which + "\n" + new String(content, StandardCharsets.UTF_8), defect);
    }
  }

  private static void assertPlain(Fault fault, String which) {
    String text = fault.toString();
    assertFalse(fault.message().isBlank(), which);
    assertTrue(text.chars().noneMatch(Character::isISOControl), which + ": " + text);
    assertFalse(text.contains("Exception") || text.contains("Optional["), which + ": " + text);
    assertTrue(text.length() < 1000, which + ": " + text);
  }

  private static byte[] mutated(String text, SplittableRandom random) {
    String changed = text;
    int changes = random.nextInt(4) == 0 ? 2 + random.nextInt(3) : 1;
    for (int i = 0; i < changes; i++) {
      changed = oneMutation(changed, random);
    }
    byte[] bytes = changed.getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(10) == 0) {
      bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
    }
    return bytes;
  }

  private static String oneMutation(String text, SplittableRandom random) {
    int at = random.nextInt(text.length());
    int until = Math.min(text.length(), at + 1 + random.nextInt(20));
    String token = TOKENS.get(random.nextInt(TOKENS.size()));
    return switch (random.nextInt(10)) {
      case 0 -> text.substring(0, at) + text.substring(until);
      case 1 -> text.substring(0, at) + token + text.substring(at);
      case 2 -> text.substring(0, at) + token + text.substring(until);
      case 3 -> text.substring(0, until) + text.substring(at);
      case 4 -> swappedWords(text, random);
      default -> replacedValue(text, at, token);
    };
  }

  /** A token in place of what stands after the next colon. */
  private static String replacedValue(String text, int from, String token) {
    int colon = text.indexOf(": ", from);
    if (colon < 0) {
      return text;
    }
    int end = colon + 2;
    while (end < text.length() && ",}]\n".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return text.substring(0, colon + 2) + token + text.substring(end);
  }

  private static String swappedWords(String text, SplittableRandom random) {
    String[] words = text.split("(?<=[ ,:])|(?=[ ,:])");
    int one = random.nextInt(words.length);
    int other = random.nextInt(words.length);
    String kept = words[one];
    words[one] = words[other];
    words[other] = kept;
    return String.join("", words);
  }
}
