package rillwright.cli.catalogue.page;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;

/** The catalogue as a page of tables, with sources as numbered notes at its end. */
public final class TablePage {
  private TablePage() {}

  /** What was asked. */
  public static Page of(Selection selection) {
    PageBuilder page = new PageBuilder("Catalogue");
    Notes notes = new Notes();
    selection.sections().forEach(section -> page.table(table(section, notes)));
    page.heading(Notes.HEADING);
    for (int i = 0; i < notes.texts().size(); i++) {
      page.marked((i + 1) + " ", notes.texts().get(i));
    }
    return page.build();
  }

  private static <T> TableBuilder table(Section<T> section, Notes notes) {
    TableBuilder table = new TableBuilder(section.title());
    for (Column<T> column : section.columns()) {
      table.column(column.heading(), column.numeric() ? Side.RIGHT : Side.LEFT);
    }
    table.column("note", Side.LEFT);
    String before = "";
    for (List<String> words : section.cells(notes)) {
      List<Cell> cells = new ArrayList<>(words.stream().map(Cell::of).toList());
      boolean again = words.get(0).equals(before);
      cells.set(0, new Cell(words.get(0), again ? Tone.AGAIN : Tone.PLAIN));
      before = words.get(0);
      table.row("", cells);
    }
    return table;
  }
}
