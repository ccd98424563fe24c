package rillwright.cli.page.desk;

import java.util.List;

/**
 * A value that is changed by dragging or by steps.
 *
 * @param address of it, as {@code --set} takes it
 * @param what it is, for people: {@code supply: pipe}
 * @param choices in their order, as the file would write them; at least two; copied
 * @param chosen which of them is nearest to what is written, from 0
 * @param written as the file or the change has it
 */
public record Handle(
    String address, String what, List<String> choices, int chosen, String written) {
  public Handle {
    choices = List.copyOf(choices);
    if (choices.size() < 2 || chosen < 0 || chosen >= choices.size()) {
      throw new IllegalArgumentException("choice " + chosen + " of " + choices.size());
    }
  }
}
