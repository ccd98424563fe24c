package rillwright.cli.large;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Project files of any number of lines, drawn by a seed: one pump, pipes as wide as what they feed
 * asks, a fall or an outlet wherever nothing goes on.
 */
public enum LargeProject {
  /** Each pipe goes on from one of those before it. */
  TREE(0),
  /** A tree with links between tees that are near each other: 15 of 100 lines. */
  LOOPS(0.15),
  /** Tees in rows and columns, with a fall or an outlet at the end of each row. */
  GRID(0);

  private final double looped;

  LargeProject(double looped) {
    this.looped = looped;
  }

  /** A project of about so many lines, the same each time. */
  public String of(int lines) {
    Text text = new Text(new Random(lines));
    int links = (int) Math.round(lines * looped);
    if (this == GRID) {
      text.grid(Math.max(2, (int) Math.round(Math.sqrt(lines / 2.0))));
    } else {
      text.tree(lines - links, links);
    }
    return text.whole();
  }

  /** Writes one: its kind, its number of lines, the file. */
  public static void main(String[] arguments) throws IOException {
    LargeProject kind = valueOf(arguments[0].toUpperCase(Locale.ROOT));
    Files.writeString(Path.of(arguments[2]), kind.of(Integer.parseInt(arguments[1])));
  }

  /** A text that grows. */
  private static final class Text {
    private static final double END_M3_PER_S = 1e-4;
    private static final double VELOCITY_M_PER_S = 0.8;
    private static final int MOST_WAYS = 3;

    private final Random random;
    private final StringBuilder points = new StringBuilder();
    private final StringBuilder lines = new StringBuilder();
    private int lineCount;
    private double wholeFlow;

    Text(Random random) {
      this.random = random;
    }

    void tree(int tees, int links) {
      int[] before = new int[tees];
      int[] ways = new int[tees];
      List<Integer> open = new ArrayList<>(List.of(0));
      for (int i = 1; i < tees; i++) {
        int at = random.nextInt(open.size());
        before[i] = open.get(at);
        if (++ways[before[i]] == MOST_WAYS) {
          open.set(at, i);
        } else {
          open.add(i);
        }
      }
      double[] fed = new double[tees];
      int[] lastTee = new int[tees];
      for (int i = tees - 1; i > 0; i--) {
        fed[i] += ways[i] == 0 ? END_M3_PER_S : 0;
        fed[before[i]] += fed[i];
        lastTee[before[i]] = ways[i] > 0 && lastTee[before[i]] == 0 ? i : lastTee[before[i]];
      }
      wholeFlow = fed[0];
      point(0, false);
      for (int i = 1; i < tees; i++) {
        point(i, ways[i] == 0);
        line(before[i], i, fed[i]);
      }
      for (int link = 0; link < links; link++) {
        int one = before[1 + random.nextInt(tees - 1)];
        int other = lastTee[lastTee[before[before[before[one]]]]];
        other = other == one || other == 0 ? before[one] : other;
        other = other == one ? lastTee[0] : other;
        line(one, other, Math.min(fed[one], fed[other]));
      }
    }

    void grid(int size) {
      wholeFlow = size * END_M3_PER_S;
      for (int row = 0; row < size; row++) {
        for (int column = 0; column < size; column++) {
          int here = row * size + column;
          point(here, column == size - 1);
          if (column + 1 < size) {
            line(here, here + 1, 3 * END_M3_PER_S);
          }
          if (column + 1 < size && row + 1 < size) {
            line(here, here + size, column == 0 ? (size - row) * END_M3_PER_S : END_M3_PER_S);
          }
        }
      }
    }

    private void point(int number, boolean end) {
      String elevation = rounded("%.2f m", 1 + random.nextDouble());
      String kind = end ? "outlet, elevation: " + elevation : "tee, elevation: 0.5 m";
      boolean fall = end && random.nextInt(3) == 0;
      String whole = fall ? "fall, crest: " + elevation + ", width: 0.4 m, target: 0.08 L/s" : kind;
      points.append("  t" + number + ": {kind: " + whole + "}\n");
    }

    private void line(int from, int to, double flow) {
      String ends = "  l" + lineCount++ + ": {from: t" + from + ", to: t" + to + ", ";
      String run = rounded("{run: %.1f m}]}\n", 2 + 3 * random.nextDouble());
      lines.append(ends + pipe(flow) + ", parts: [" + part() + run);
    }

    private static String pipe(double flow) {
      double inside = 1e3 * Math.sqrt(4 * flow / (Math.PI * VELOCITY_M_PER_S));
      return rounded("pipe: {inside: %.1f mm, roughness: 0.01 mm}", inside);
    }

    private String part() {
      return switch (random.nextInt(12)) {
        case 0 -> "{valve: {k: 0.2}}, ";
        case 1 -> "{check valve: {k: 2}}, ";
        case 2 -> "{gauge: {name: G" + lineCount + ", elevation: 0.5 m}}, ";
        case 3, 4 -> "{fitting: {k: 0.9}}, ";
        default -> "";
      };
    }

    String whole() {
      String ahead = "rillwright: 1\npoints:\n  pond: {kind: basin, level: 0 m}\n";
      String supply = "lines:\n  supply: {from: pond, to: t0, " + pipe(wholeFlow);
      String curve = "[{flow: 0 L/s, head: 14 m}, {flow: %.3f L/s, head: 2 m}]";
      String pumps = "pumps:\n  p: {points: " + rounded(curve, 2e3 * wholeFlow) + "}\n";
      return ahead + points + supply + ", parts: [{pump: p}, {run: 5 m}]}\n" + lines + pumps;
    }

    private static String rounded(String words, double number) {
      return String.format(Locale.ROOT, words, number);
    }
  }
}
