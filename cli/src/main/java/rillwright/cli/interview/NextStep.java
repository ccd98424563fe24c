package rillwright.cli.interview;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A command to run once the project is written.
 *
 * @param command its name
 * @param options behind the file; empty for none
 * @param words what it gives
 */
public record NextStep(String command, String options, String words) {
  private static NextStep of(String command, String words) {
    return new NextStep(command, "", words);
  }

  /** Those that fit some answers, in their order. */
  public static List<NextStep> after(Answers answers) {
    PumpAnswer pump = PumpAnswer.of(answers.to(Questions.PUMP));
    boolean chosen = pump instanceof PumpAnswer.Sheet;
    boolean runs = !(pump instanceof PumpAnswer.NotChosen);
    List<NextStep> steps = new ArrayList<>();
    steps.add(of("check", "what the file describes, and what was taken"));
    if (runs) {
      steps.add(of("solve", "what flows where"));
    }
    if (answers.isJob(Questions.EXISTING)) {
      steps.add(
          of(
              "weak",
              "why the fall is weak, once the readings "
                  + (chosen ? "are filled in" : "and the pump's own data sheet are in the file")));
    } else if (!chosen) {
      steps.add(of("duty", "the flow and head that the pump must make"));
      steps.add(
          new NextStep(
              "pumps", " --from FOLDER", "which data sheets of a folder meet the targets"));
    }
    if (answers.isJob(Questions.TWO_FALLS) && runs) {
      steps.add(of("balance", "how to set the valves of the two falls"));
    }
    if (answers.isJob(Questions.STREAM) && runs) {
      steps.add(of("stream", "stream depths, and whether the pond has enough water"));
    }
    if (runs) {
      steps.add(new NextStep("section", " --to section.svg", "the drawing"));
      steps.add(new NextStep("sheet", " --to job.html", "the job sheet to print"));
    }
    return steps;
  }

  /** As it is typed. */
  public String line(Path file) {
    String name = file.toString();
    String safe = name.matches("[\\w./:-]+") ? name : "'" + name.replace("'", "'\\''") + "'";
    return command + " " + safe + options;
  }
}
