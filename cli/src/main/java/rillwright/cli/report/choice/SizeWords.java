package rillwright.cli.report.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rillwright.cli.wording.PlainText;
import rillwright.solver.study.pipechoice.PipeOption;

/** Sizes of pipe in words. */
public final class SizeWords {
  private SizeWords() {}

  /** {@code 2 in}, or {@code 2 in, 3 in} in the order of the lines where they differ. */
  public static String of(PipeOption option) {
    List<String> names = option.sizes().values().stream().map(PipeOption.Size::name).toList();
    return names.stream().distinct().count() == 1 ? names.get(0) : String.join(", ", names);
  }

  /** The lines: {@code "supply" and "upper"}. */
  public static String lines(PipeOption option) {
    List<String> names =
        new ArrayList<>(
            option.sizes().keySet().stream()
                .map(line -> PlainText.quoted(line.value()))
                .collect(Collectors.toList()));
    if (names.size() == 1) {
      return names.get(0);
    }
    String last = names.remove(names.size() - 1);
    return String.join(", ", names) + " and " + last;
  }
}
