package rillwright.cli.interview;

import rillwright.cli.file.quantity.NotAQuantity;

/** Which pump: that of a data sheet, a duty to plan for, or none yet. */
sealed interface PumpAnswer {
  /** The answer of those who have not chosen. */
  String NONE_YET = "none yet";

  /** What stands in the supply line. */
  String name();

  /** The section {@code pumps}. */
  String section(boolean metric);

  /** What an answer says. */
  static PumpAnswer of(String answer) {
    if (answer.equals(NONE_YET) || answer.equals(Questions.NONE)) {
      return new NotChosen();
    }
    try {
      return PlannedDuty.read(answer)
          .<PumpAnswer>map(Planned::new)
          .orElseGet(() -> new Sheet(answer));
    } catch (NotAQuantity wrong) {
      return new Sheet(answer);
    }
  }

  /** None: the file says so, and the commands that need no pump go on. */
  record NotChosen() implements PumpAnswer {
    @Override
    public String name() {
      return "to be chosen";
    }

    @Override
    public String section(boolean metric) {
      return """
      # While the pump is "to be chosen", "duty" gives the flow and head that it must make, and
      # "pumps --from FOLDER" ranks data sheets. Then, with its name in the supply line too:
      # pumps:
      #   my pump: my-pump.csv
      """;
    }
  }

  /** A flow and head to plan for. */
  record Planned(PlannedDuty duty) implements PumpAnswer {
    @Override
    public String name() {
      return "planned, " + duty.flow() + " at " + duty.head();
    }

    @Override
    public String section(boolean metric) {
      StringBuilder section =
          new StringBuilder(
              """
              pumps:
                # No real pump. This curve is invented: a parabola through the flow and head to plan for, so
                # that there is something to compute with. Choose by "duty" and "pumps --from FOLDER", then
                # write the path of a data sheet here, and its name in the supply line:
                #   my pump: my-pump.csv
              """);
      section
          .append("  ")
          .append(Written.yaml(name()))
          .append(":\n    kind: invented\n    points:\n");
      duty.points(metric).forEach(it -> section.append("      - ").append(it).append('\n'));
      return section.toString();
    }
  }

  /** That of a data sheet. */
  record Sheet(String path) implements PumpAnswer {
    private static final String ENDING = ".csv";

    @Override
    public String name() {
      String file = path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
      String name =
          file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
      return name.isBlank() || name.equals("to be chosen") ? "the pump" : name;
    }

    @Override
    public String section(boolean metric) {
      return "pumps:\n  " + Written.yaml(name()) + ": " + Written.yaml(path) + "\n";
    }
  }
}
