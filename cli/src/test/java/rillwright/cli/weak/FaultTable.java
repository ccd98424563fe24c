package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Faults to be injected into the service call's project, each with its row of the table. */
final class FaultTable {
  private FaultTable() {}

  /**
   * Where the pump's flow is read, and the line whose valve is shut: the bypass splits the line.
   */
  record Lines(String pump, String valve) {}

  private static final Lines ONE_LINE = new Lines("supply", "supply");

  /**
   * A row of the table: flows in L/s, pressures in psi, watts, mm; NaN where it is not checked.
   *
   * @param edit what the fault makes of the project
   * @param seen share of the crest's flow that is left where it is read
   */
  record Fault(
      String name, UnaryOperator<String> edit, Lines lines, double seen, List<Double> row) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Fault fault(String name, UnaryOperator<String> edit, double... row) {
    return new Fault(name, edit, ONE_LINE, 1, Arrays.stream(row).boxed().toList());
  }

  private static UnaryOperator<String> with(String... oldAndNew) {
    return project -> {
      String edited = project;
      for (int i = 0; i < oldAndNew.length; i += 2) {
        assertTrue(edited.contains(oldAndNew[i]), oldAndNew[i]);
        edited = edited.replace(oldAndNew[i], oldAndNew[i + 1]);
      }
      return edited;
    };
  }

  /** The pump's sheet with flows, heads and powers multiplied. */
  private static UnaryOperator<String> sheet(double flow, double head, double power) {
    double[][] points = {
      {0, 7.2, 250}, {1, 6.9, 300}, {2, 6.2, 348}, {3, 5.05, 385}, {4, 3.35, 405}, {5.2, 0, 410}
    };
    StringBuilder text = new StringBuilder("    points:\n");
    for (double[] point : points) {
      text.append(
          String.format(
              Locale.ROOT,
              "      - {flow: %.6f L/s, head: %.6f m, power: %.4f W}%n",
              flow * point[0],
              head * point[1],
              power * point[2]));
    }
    return project ->
        project.substring(0, project.indexOf("    points:\n", project.indexOf("pumps:"))) + text;
  }

  /** A branch that lets water out by Q = c √(head over a level), at a tee in the supply. */
  private static String branch(String flowAtOneMetre) {
    return "  out:\n    from: tee\n    to: outside\n    parts:\n      - loss: {flow: "
        + flowAtOneMetre
        + ", head: 1 m, exponent: 2}\n";
  }

  private static final String TEE_AND_OUTLET =
      "points:\n  tee: {kind: tee}\n  outside: {kind: outlet, elevation: LEVEL, level: LEVEL}\n";

  private static UnaryOperator<String> leak() {
    return with(
        "points:\n  pond",
        TEE_AND_OUTLET.replace("LEVEL", "-0.3 m") + "  pond",
        "    to: fall\n",
        "    to: tee\n",
        "      - run: 26 m\n      - fitting: {k: 5.06}\n",
        "      - fitting: {k: 2.78}\n      - run: 13 m\n"
            + "  beyond:\n    from: tee\n    to: fall\n"
            + "    pipe: {inside: 52 mm, roughness: 0.01 mm}\n"
            + "    parts:\n      - run: 13 m\n      - fitting: {k: 2.28}\n"
            + branch("0.62 L/s"));
  }

  private static UnaryOperator<String> bypass() {
    return with(
        "points:\n  pond",
        TEE_AND_OUTLET.replace("LEVEL", "0 m") + "  pond",
        "    to: fall\n",
        "    to: tee\n",
        "      - check valve",
        branch("0.75 L/s")
            + "  beyond:\n    from: tee\n    to: fall\n"
            + "    pipe: {inside: 52 mm, roughness: 0.01 mm}\n    parts:\n      - check valve");
  }

  static Stream<Fault> list() {
    double unknown = Double.NaN;
    return Stream.of(
        fault("healthy", with(), 3.41, 3.41, 5.8, 5.4, 10.2, 2.6, 395, 23),
        fault(
            "net clogged",
            // its loss 25 times as great: a fifth of it is open
            with("head: 8.9 mm, exponent: 2}}", "head: 8.9 mm, exponent: 2}, clogged: 80 %}"),
            3.34,
            3.34,
            5.7,
            5.3,
            10.2,
            2.6,
            393,
            23),
        fault(
            "intake cage packed",
            with("entrance: {k: 1.5}", "entrance: {k: 45}"),
            2.35,
            2.35,
            4.2,
            4.0,
            10.2,
            2.6,
            362,
            18),
        fault("worn", sheet(0.75, 0.75, 0.90), 2.55, 2.55, 4.5, 4.3, 7.7, 2.6, 355, 19),
        fault(
            "speed 85 %",
            with("pump: sheet", "pump: {model: sheet, speed: 85 %}"),
            2.68,
            2.68,
            4.7,
            4.4,
            7.4,
            2.6,
            238,
            20),
        fault("reversed", sheet(0.5, 0.6, 0.8), 1.74, 1.74, 3.5, 3.4, 6.1, 2.6, 317, 15),
        fault("air", sheet(1, 0.80, 0.92), 3.07, 3.07, 5.2, 4.9, unknown, 2.6, 355, 21),
        fault(
            "check valve jammed",
            with("check valve: {k: 2.0,", "check valve: {k: 40,"),
            2.44,
            2.44,
            7.9,
            4.1,
            10.2,
            2.6,
            365,
            18),
        fault(
            "ball valve half shut",
            with("valve: {k: 0.1}", "valve: {k: 38}"),
            2.44,
            2.44,
            7.9,
            4.1,
            10.2,
            2.6,
            366,
            18),
        fault(
            "hose kinked",
            with("- run: 26 m", "- loss: {k: 40}\n      - run: 26 m"),
            2.40,
            2.40,
            8.0,
            7.8,
            10.2,
            2.6,
            364,
            18),
        fault(
            "pipe fouled",
            with(
                "inside: 52 mm, roughness: 0.01 mm", "inside: 44 mm, roughness: 1 mm",
                "name: G1,", "name: G1, inside: 52 mm,"),
            2.18,
            2.18,
            8.4,
            8.0,
            10.2,
            2.6,
            355,
            17),
        fault(
            "pipe 1-1/2 in",
            with("inside: 52 mm", "inside: 40.4 mm", "name: G1,", "name: G1, inside: 52 mm,"),
            2.42,
            2.42,
            8.0,
            7.3,
            10.2,
            2.6,
            365,
            18),
        fault(
            "lift 0.8 m more",
            with("crest: 1.85 m", "crest: 2.65 m"),
            3.14,
            3.14,
            6.5,
            6.2,
            10.2,
            3.8,
            388,
            22),
        fault(
            "air pocket",
            with("- run: 26 m", "- loss: {k: 25}\n      - run: 26 m"),
            2.67,
            2.67,
            7.5,
            7.2,
            10.2,
            2.6,
            374,
            20),
        fault("buried leak", leak(), 3.58, 2.55, 5.3, 4.9, 10.2, unknown, 399, 19),
        new Fault(
            "bypass open",
            bypass(),
            new Lines("supply", "beyond"),
            1,
            List.of(3.92, 2.57, 4.4, 4.3, 8.8, 2.6, 404.0, 19.0)),
        fault(
            "spill box mats",
            with("crest: 1.85 m", "crest: 2.20 m"),
            3.29,
            3.29,
            6.1,
            5.7,
            10.2,
            unknown,
            392,
            22),
        fault(
            "pond 80 mm low",
            // the table's skimmer law knows no sill; here the sill goes down with the pond
            with("level: 0 m", "level: -80 mm", "sill: -90 mm", "sill: -170 mm"),
            3.38,
            3.38,
            5.8,
            5.4,
            10.2,
            2.6,
            394,
            23),
        new Fault(
            "stream leak",
            with(),
            ONE_LINE,
            0.8,
            List.of(3.41, 2.73, 5.8, 5.4, 10.2, 2.6, 395.0, 20.0)),
        fault(
            "crest wider",
            with("width: 0.61 m", "width: 0.95 m"),
            3.41,
            3.41,
            5.8,
            5.4,
            10.2,
            2.6,
            395,
            17));
  }
}
