package rillwright.curves.sheet;

import java.util.Map;
import rillwright.curves.sheet.text.Cell;

/**
 * A row that is a point.
 *
 * @param written the point
 * @param cells where its values stand, by the headings that count
 */
record Row(WrittenPoint written, Map<String, Cell> cells) {}
