package rillwright.cli.hardening;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Damages the text of a project file: its bytes, tokens, values or structure. */
final class Damage {
  private static final List<String> STRANGE =
      List.of(
          "0",
          "-1",
          "-0",
          "1e300",
          "1e-300",
          "1e400",
          "1/0",
          "NaN",
          ".inf",
          "0 %",
          "100 %",
          "-5 in",
          "1e9 gph",
          "0 gph",
          "-1e9 m",
          "1e-9 mm",
          "9".repeat(400),
          "1,5 ft",
          "3 ft ± 5 in",
          "1 ft .. 2 ft",
          "null",
          "~",
          "yes",
          "no",
          "{}",
          "[]",
          "[1, 2]",
          "{k: 1}",
          "''",
          "&x",
          "*x",
          "!!int",
          "|",
          "---",
          "...",
          "? ",
          ": ",
          "- ",
          "\t",
          "\r",
          "#",
          "\"",
          "'",
          "{",
          "]",
          "\u0000",
          "\u001b[31m",
          "\u202e",
          "\uFEFF",
          "\uD83D\uDC1F",
          "to be chosen",
          "pond",
          "end 0",
          "tee 0",
          "kind: basin",
          "psi",
          "ft",
          "[".repeat(60),
          "{a: ".repeat(60));

  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

  private final Draw draw;

  Damage(Draw draw) {
    this.draw = draw;
  }

  /** The bytes of a text with one to three things wrong, or at least other. */
  byte[] of(String text) {
    String changed = text;
    int changes = 1 + (draw.chance(0.3) ? draw.below(3) : 0);
    for (int i = 0; i < changes && !changed.isEmpty(); i++) {
      changed = one(changed);
    }
    byte[] bytes = changed.getBytes(StandardCharsets.UTF_8);
    if (bytes.length > 0 && draw.chance(0.05)) {
      bytes[draw.below(bytes.length)] ^= (byte) (1 << draw.below(8));
    }
    return bytes;
  }

  private String one(String text) {
    return switch (draw.below(9)) {
      case 0 -> tokens(text);
      case 1, 2 -> lines(text);
      case 3, 4, 5 -> value(text);
      default -> number(text);
    };
  }

  /** A stretch cut out, doubled or exchanged. */
  private String tokens(String text) {
    int from = draw.below(text.length());
    int to = Math.min(text.length(), from + 1 + draw.below(12));
    String token = draw.chance(0.3) ? "" : draw.oneOf(STRANGE);
    return text.substring(0, from) + token + text.substring(draw.chance(0.5) ? from : to);
  }

  /** A line left out, doubled, moved or indented otherwise. */
  private String lines(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    int at = draw.below(lines.size());
    String line = lines.get(at);
    switch (draw.below(4)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(draw.below(lines.size()), line);
      case 2 -> lines.add(draw.below(lines.size()), lines.remove(at));
      default -> lines.set(at, draw.chance(0.5) ? "  " + line : line.replaceFirst("^ {2}", ""));
    }
    return String.join("\n", lines) + "\n";
  }

  /** Something strange in place of what stands behind a colon. */
  private String value(String text) {
    int colon = text.indexOf(": ", draw.below(text.length()));
    if (colon < 0) {
      return text;
    }
    int end = colon + 2;
    while (end < text.length() && ",}]\n".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return text.substring(0, colon + 2) + draw.oneOf(STRANGE) + text.substring(end);
  }

  /** Another number of the same unit: nothing, its opposite, or some powers of ten away. */
  private String number(String text) {
    Matcher number = NUMBER.matcher(text);
    if (!number.find(draw.below(text.length()))) {
      return text;
    }
    double value = Double.parseDouble(number.group());
    String other =
        switch (draw.below(6)) {
          case 0 -> "0";
          case 1 -> "-" + number.group();
          default -> Draw.quantity(value * draw.logUniform(1e-4, 1e4), "").strip();
        };
    return text.substring(0, number.start()) + other + text.substring(number.end());
  }
}
