package rillwright.curves.sheet;

import java.util.List;
import rillwright.curves.sheet.fault.FaultList;
import rillwright.curves.wording.PlainText;

/** Checks that rows make a pump's curve together. */
final class CurveChecker {
  /** Flows nearer than this, m³/s, are the same: a few millilitres an hour. */
  private static final double SAME_FLOW_M3_PER_S = 1e-9;

  private final int headerLine;
  private final FaultList faults;

  CurveChecker(int headerLine, FaultList faults) {
    this.headerLine = headerLine;
    this.faults = faults;
  }

  /** Checks that flows rise from row to row. */
  void checkOrder(List<Row> rows) {
    for (int i = 1; i < rows.size(); i++) {
      checkOrder(rows.get(i - 1), rows.get(i));
    }
  }

  /** Checks what needs all rows of the sheet. */
  void checkWhole(List<Row> rows) {
    if (rows.size() < 2) {
      faults.add(
          headerLine,
          1,
          rows.isEmpty()
              ? "no rows of numbers below the headings; a curve needs two or more"
              : "only one row of numbers below the headings; a curve needs two or more");
      return;
    }
    Row first = rows.get(0);
    Row last = rows.get(rows.size() - 1);
    if (!(last.point().headM() < first.point().headM())) {
      faults.add(
          last.head().line(),
          last.head().column(),
          "the last head "
              + PlainText.quoted(last.head().text())
              + " is not below the first, "
              + PlainText.quoted(first.head().text())
              + " in line "
              + first.head().line()
              + "; a pump's head falls as its flow rises");
    }
    checkPowers(rows);
  }

  private void checkOrder(Row before, Row row) {
    double rise = row.point().flowM3PerS() - before.point().flowM3PerS();
    if (rise > SAME_FLOW_M3_PER_S) {
      return;
    }
    String flow = PlainText.quoted(row.flow().text());
    String earlier = PlainText.quoted(before.flow().text()) + " in line " + before.flow().line();
    faults.add(
        row.flow().line(),
        row.flow().column(),
        rise < -SAME_FLOW_M3_PER_S
            ? "flow %s is below %s; put the rows in order of flow, from small to large"
                .formatted(flow, earlier)
            : "flow %s is the same as %s; leave one of the two rows out".formatted(flow, earlier));
  }

  private void checkPowers(List<Row> rows) {
    long powers = rows.stream().filter(row -> row.point().powerW().isPresent()).count();
    if (powers == 1) {
      faults.add(
          headerLine, 1, "only one row has a power; give it in two rows or more, or in none");
    }
  }
}
