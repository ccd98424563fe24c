package rillwright.curves.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.curves.sheet.fault.FaultList;
import rillwright.curves.sheet.text.Cell;
import rillwright.curves.sheet.text.NumberReader;
import rillwright.curves.unit.Unit;
import rillwright.curves.wording.Listing;
import rillwright.curves.wording.Nearest;
import rillwright.curves.wording.PlainText;

/**
 * Reads the line of headings.
 *
 * <p>A column of another name is passed over, but not in silence where it may have been meant to
 * count: if its name is nearly one that is missing, or it has a unit of flow or power and that
 * column is missing.
 */
final class HeaderReader {
  private final NumberReader numbers;
  private final FaultList faults;

  HeaderReader(NumberReader numbers, FaultList faults) {
    this.numbers = numbers;
    this.faults = faults;
  }

  /** The header, or nothing if the line cannot be one, which is then noted. */
  Optional<Header> read(List<Cell> cells) {
    Cell first = cells.get(0);
    for (Cell cell : cells) {
      if (cell.text().indexOf('\t') >= 0) {
        faults.add(
            cell.line(),
            cell.column(),
            "tabs stand between the columns; put commas there, or semicolons where decimals have a"
                + " comma");
        return Optional.empty();
      }
    }
    if (cells.stream().anyMatch(cell -> numbers.parse(cell.text()).isPresent())) {
      faults.add(
          first.line(),
          first.column(),
          "the headings are missing; the first line must name the columns with their units, such"
              + " as \"flow [gph],head [ft],power [W]\"");
      return Optional.empty();
    }
    Map<ColumnKind, Column> columns = new EnumMap<>(ColumnKind.class);
    List<Heading> others = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      Heading heading = Heading.of(cells.get(i));
      Optional<ColumnKind> kind = ColumnKind.of(heading);
      if (kind.isEmpty()) {
        others.add(heading);
      } else if (columns.containsKey(kind.get())) {
        note(heading, "a second column \"" + kind.get().heading() + "\"; leave one of them out");
      } else {
        columns.put(kind.get(), new Column(kind.get(), i, unitOf(heading, kind.get())));
      }
    }
    for (ColumnKind kind : ColumnKind.values()) {
      if (!columns.containsKey(kind) && kind != ColumnKind.NPSH_REQUIRED) {
        tellMissing(kind, first, others);
      }
    }
    List<String> passedOver =
        others.stream().map(other -> other.cell().text()).filter(text -> !text.isEmpty()).toList();
    return Optional.of(new Header(columns, cells.size(), passedOver));
  }

  /** The unit of a heading; the usual one where it is wrong, which is then noted. */
  private Unit unitOf(Heading heading, ColumnKind kind) {
    Optional<Unit> unit = heading.unit().filter(kind::isMeasuredIn);
    if (heading.unitText().isEmpty()) {
      note(
          heading,
          "the column \"%s\" has no unit; write it in brackets, such as \"%s\""
              .formatted(kind.heading(), kind.example()));
    } else if (unit.isEmpty()) {
      String written = heading.unitText().get();
      note(
          heading,
          "%s is not a unit of %s; %s would do%s"
              .formatted(
                  PlainText.quoted(written),
                  kind.heading(),
                  Listing.either(kind.symbols()),
                  didYouMean(written, kind.symbols())));
    }
    return unit.orElse(kind.usualUnit());
  }

  private void tellMissing(ColumnKind kind, Cell first, List<Heading> others) {
    Optional<Heading> meant = others.stream().filter(other -> isLike(other, kind)).findFirst();
    if (meant.isPresent()) {
      String written = PlainText.quoted(meant.get().cell().text());
      note(
          meant.get(),
          kind == ColumnKind.POWER
              ? written
                  + " is not a column of this sheet; did you mean \""
                  + kind.example()
                  + "\", the electrical power drawn? If it is something else, leave it out"
              : written
                  + " is not a column of this sheet; did you mean \""
                  + kind.example()
                  + "\"?");
    } else if (kind.isNeeded()) {
      faults.add(
          first.line(),
          first.column(),
          "no column \"%s\"; the headings need one such as \"%s\""
              .formatted(kind.heading(), kind.example()));
    }
  }

  /** Lengths are too common (inlets, suction heads) to mean a head. */
  private static boolean isLike(Heading other, ColumnKind kind) {
    boolean unitTells =
        kind != ColumnKind.HEAD && other.unit().filter(kind::isMeasuredIn).isPresent();
    return unitTells || !Nearest.to(other.name(), List.of(kind.heading())).isEmpty();
  }

  private static String didYouMean(String written, List<String> right) {
    return Nearest.to(written, right).stream()
        .findFirst()
        .map(word -> "; did you mean \"" + word + "\"?")
        .orElse("");
  }

  private void note(Heading heading, String message) {
    faults.add(heading.cell().line(), heading.cell().column(), message);
  }
}
