package rillwright.cli.report.choice;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rillwright.curves.wording.Listing;
import rillwright.curves.wording.PlainText;
import rillwright.solver.study.pipechoice.PipeOption;
import rillwright.solver.study.pipechoice.SizedPipe;

/** Sizes of pipe in words: one where all lines take it together, else one for each line. */
public final class SizeWords {
  /** Letters that a heading may have before it takes too much of a table. */
  private static final int LONGEST_HEADING = 34;

  private final PipeOption first;
  private final boolean each;

  /**
   * Words for sizes that are compared.
   *
   * @param pipes at least one, all of the same lines
   */
  public SizeWords(List<? extends SizedPipe> pipes) {
    this.first = pipes.get(0).option();
    this.each = pipes.stream().anyMatch(pipe -> names(pipe.option()).distinct().count() > 1);
  }

  private static Stream<String> names(PipeOption option) {
    return option.sizes().values().stream().map(PipeOption.Size::name);
  }

  /** {@code 2 in}, or {@code 2 in, 3 in} in the order of the lines where each takes its own. */
  public String cell(PipeOption option) {
    return each
        ? names(option).collect(Collectors.joining(", "))
        : names(option).findFirst().orElseThrow();
  }

  /** The same in a sentence, with the names of the lines: {@code "supply" 2 in, "high" 3 in}. */
  public String phrase(PipeOption option) {
    return each
        ? option.sizes().entrySet().stream()
            .map(line -> PlainText.quoted(line.getKey().value()) + " " + line.getValue().name())
            .collect(Collectors.joining(", "))
        : cell(option);
  }

  /** The heading of a table: with the names of the lines in order where each takes its own. */
  public String heading() {
    String named =
        "SIZES OF "
            + first.sizes().keySet().stream()
                .map(line -> PlainText.harmless(line.value()))
                .collect(Collectors.joining(", "));
    return each && named.length() <= LONGEST_HEADING ? named : "SIZES";
  }

  /** What is tried: {@code Pipe of "supply" and "high", sizes in this order, the best first}. */
  public String title() {
    return "Pipe of "
        + lines()
        + (each ? ", sizes in this order, the best first" : ", the best first");
  }

  /** The lines: {@code "supply" and "upper"}. */
  public String lines() {
    return Listing.of(
        first.sizes().keySet().stream().map(line -> PlainText.quoted(line.value())).toList());
  }
}
