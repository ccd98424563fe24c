package rillwright.cli.catalogue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * One table of the catalogue: comment lines that begin with {@code #} and define the sources
 * ({@code # key = source}), a line of column names, then rows. Cells hold no commas.
 *
 * <p>A fault in a table is a defect of the program, not of its input: an {@link
 * IllegalStateException} that names file and line.
 *
 * @param rows in the order of the file
 */
record CatalogueTable(List<TableRow> rows) {
  CatalogueTable {
    rows = List.copyOf(rows);
  }

  /** The rows of a resource beside this class, each made into what it stands for. */
  static <T> List<T> read(String file, Function<TableRow, T> maker) {
    try (InputStream stream = CatalogueTable.class.getResourceAsStream(file)) {
      if (stream == null) {
        throw new IllegalStateException(file + " is missing from the program");
      }
      return parse(file, new InputStreamReader(stream, StandardCharsets.UTF_8)).rows().stream()
          .map(maker)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  /** Reads a table. */
  static CatalogueTable parse(String file, Reader text) throws IOException {
    Map<String, String> sources = new HashMap<>();
    List<TableRow> rows = new ArrayList<>();
    List<String> columns = List.of();
    BufferedReader reader = new BufferedReader(text);
    int number = 0;
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      String place = file + ":" + ++number;
      if (line.startsWith("#")) {
        int equals = line.indexOf(" = ");
        if (equals > 0) {
          sources.put(line.substring(1, equals).strip(), line.substring(equals + 3).strip());
        }
      } else if (columns.isEmpty()) {
        columns = List.of(line.split(",", -1));
      } else {
        rows.add(new TableRow(place, columns, List.of(line.split(",", -1)), sources));
      }
    }
    return new CatalogueTable(rows);
  }
}
