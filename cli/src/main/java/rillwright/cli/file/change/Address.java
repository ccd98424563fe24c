package rillwright.cli.file.change;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;

/**
 * Which value of a file is meant: {@code lines.intake.skimmer.clogged}. Names with dots stand in
 * quotes.
 *
 * @param steps names from the file's first level down, none for the file itself; copied
 */
public record Address(List<String> steps) {
  public Address {
    steps = List.copyOf(steps);
  }

  /**
   * The address in a text: {@code lines.intake.skimmer}.
   *
   * @throws InvalidInput if it is none
   */
  public static Address of(String text) {
    return parse(text + "=value", Place.whole("address \"" + text + "\"")).address();
  }

  /** Of what stands one step below. */
  public Address below(String step) {
    List<String> longer = new ArrayList<>(steps);
    longer.add(step);
    return new Address(longer);
  }

  /** As it is written in a change: names that need it in quotes. */
  public String text() {
    StringBuilder text = new StringBuilder();
    for (String step : steps) {
      text.append(text.isEmpty() ? "" : ".").append(needsQuotes(step) ? quoted(step) : step);
    }
    return text.toString();
  }

  private static boolean needsQuotes(String step) {
    boolean begins = step.startsWith("\"") || step.startsWith("'");
    return begins || step.contains(".") || step.contains("=") || !step.equals(step.strip());
  }

  private static String quoted(String step) {
    char quote = step.indexOf('"') < 0 ? '"' : '\'';
    return quote + step + quote;
  }

  /**
   * The address before the equals sign of a change, and the text after it.
   *
   * @param value the new value as written
   */
  record Assignment(Address address, String value) {}

  /** What a change says; throws if it is no address, an equals sign and a value. */
  static Assignment parse(String change, Place place) {
    List<String> steps = new ArrayList<>();
    StringBuilder step = new StringBuilder();
    char quote = 0;
    for (int i = 0; i < change.length(); i++) {
      char character = change.charAt(i);
      if (quote != 0) {
        if (character == quote) {
          quote = 0;
        } else {
          step.append(character);
        }
      } else if ((character == '"' || character == '\'') && step.toString().isBlank()) {
        quote = character;
        step.setLength(0);
      } else if (character == '.' || character == '=') {
        steps.add(step.toString().strip());
        step.setLength(0);
        if (character == '=') {
          return assignment(steps, change.substring(i + 1).strip(), place);
        }
      } else {
        step.append(character);
      }
    }
    throw new InvalidInput(
        place,
        quote == 0
            ? "a change is written as an address, \"=\" and a value:"
                + " \"lines.intake.skimmer.clogged=40 %\""
            : "a quote in this change is not closed");
  }

  private static Assignment assignment(List<String> steps, String value, Place place) {
    if (steps.contains("")) {
      throw new InvalidInput(
          place,
          "a name is missing in the address; write for example lines.intake.skimmer.clogged");
    }
    if (value.isEmpty()) {
      throw new InvalidInput(place, "the new value is missing after \"=\"");
    }
    return new Assignment(new Address(FormerNames.renewed(steps)), value);
  }
}
