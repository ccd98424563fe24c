package rillwright.cli.file.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.Span;
import rillwright.cli.file.tree.SpanReader;

/**
 * Writes a changed tree into the text of the one before. A piece that is in both keeps its text,
 * the comment behind it and the lines above it; a piece that went takes the comment behind it
 * along, and comments on lines of their own stay.
 */
final class Splice {
  private final SourceText source;
  private final String text;
  private final Manner manner;

  private Splice(SourceText source, Manner manner) {
    this.source = source;
    this.text = source.text();
    this.manner = manner;
  }

  /**
   * The text that says what a changed tree says.
   *
   * @param before what the source says
   * @param after what it is to say
   * @throws InvalidInput if it is written in a way that cannot be edited
   */
  static String write(SourceText source, MapNode before, MapNode after) {
    Span whole = SpanReader.read(source);
    Manner manner = Manner.of(source, whole);
    return new Splice(source, manner).whole(whole, before, after);
  }

  private String whole(Span span, MapNode before, MapNode after) {
    String head = text.substring(0, span.start());
    return head + node(span, before, after) + text.substring(regionEnd(span));
  }

  /** Where what is written anew for a piece ends: of lines, at the end of the last. */
  private int regionEnd(Span span) {
    return span.isBlock() ? lineEnd(span.end()) : span.end();
  }

  private int lineEnd(int from) {
    int end = from;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return end;
  }

  private String node(Span span, Node before, Node after) {
    if (Alike.say(before, after)) {
      return text.substring(span.start(), regionEnd(span));
    }
    if (before instanceof MapNode b && after instanceof MapNode a && !b.entries().isEmpty()) {
      List<Integer> kept = Kept.entries(b, a);
      List<Piece> pieces = new ArrayList<>();
      for (int i = 0; i < kept.size(); i++) {
        pieces.add(piece(span, kept.get(i), b, a.entries().get(i)));
      }
      return collection(span, pieces);
    }
    if (before instanceof ListNode b && after instanceof ListNode a && !b.items().isEmpty()) {
      List<Integer> kept = Kept.items(b, a);
      List<Piece> pieces = new ArrayList<>();
      for (int i = 0; i < kept.size(); i++) {
        pieces.add(piece(span, kept.get(i), b, a.items().get(i)));
      }
      return collection(span, pieces);
    }
    throw new InvalidInput(
        source.placeOf(span.start()), "nothing stands in these brackets; edit the file by hand");
  }

  /**
   * One piece of a changed map or list.
   *
   * @param number its number before, or -1
   * @param text what is to be written
   */
  private record Piece(int number, String text) {}

  private Piece piece(Span span, int number, MapNode before, Entry after) {
    if (number < 0) {
      return new Piece(-1, manner.entry(after, span.isBlock(), column(span.start())));
    }
    Entry was = before.entries().get(number);
    Span key = span.keys().get(number);
    String name =
        was.key().equals(after.key())
            ? text.substring(key.start(), key.end())
            : manner.name(after.key(), span.isBlock());
    return new Piece(
        number, name + valueAfter(span, key.end(), number, was.value(), after.value()));
  }

  private Piece piece(Span span, int number, ListNode before, Node after) {
    if (number < 0) {
      return new Piece(-1, manner.item(after, span.isBlock()));
    }
    Span item = span.pieces().get(number);
    Node was = before.items().get(number);
    if (!span.isBlock()) {
      boolean isNew = replaced(item, was, after);
      return new Piece(number, isNew ? manner.inBrackets(after) : node(item, was, after));
    }
    return new Piece(number, "-" + valueAfter(span, dash(item) + 1, number, was, after));
  }

  private static boolean replaced(Span span, Node was, Node after) {
    return !Alike.say(was, after)
        && (was instanceof Scalar
            || !was.getClass().equals(after.getClass())
            || span.pieces().isEmpty());
  }

  /**
   * What follows a name or a dash: the value, and of lines what stands behind it.
   *
   * @param from the end of the name or dash
   */
  private String valueAfter(Span parent, int from, int number, Node was, Node after) {
    Span value = parent.pieces().get(number);
    String behind =
        parent.isBlock() && !value.isBlock()
            ? text.substring(value.end(), lineEnd(value.end()))
            : "";
    String between = text.substring(from, value.start());
    boolean isEmptied = value.isBlock() && Alike.isEmpty(after);
    if (!replaced(value, was, after) && !isEmptied) {
      return between + node(value, was, after) + behind;
    }
    boolean isItem = parent.keys().isEmpty();
    String mark = isItem ? "" : ":";
    if (parent.isBlock() && !isItem && manner.takesLines(after)) {
      return mark + behind + manner.lines(after, column(parent.start()));
    }
    boolean isSpaced = !value.isBlock() && value.start() < value.end();
    return (isSpaced ? between : mark + " ")
        + manner.value(after, parent.isBlock(), isItem)
        + behind;
  }

  private String collection(Span span, List<Piece> pieces) {
    return span.isBlock() ? onLines(span, pieces) : inBrackets(span, pieces);
  }

  /** Pieces on lines of their own, with what stands above each. */
  private String onLines(Span span, List<Piece> pieces) {
    StringBuilder written = new StringBuilder();
    String fresh = manner.lineBreak() + " ".repeat(column(span.start()));
    List<Integer> there = pieces.stream().map(Piece::number).toList();
    int passed = 0;
    for (Piece piece : pieces) {
      if (piece.number() >= 0) {
        written.append(commentsOfGone(span, passed, piece.number(), there));
        passed = Math.max(passed, piece.number() + 1);
      }
      String above = piece.number() > 0 ? above(span, piece.number()) : fresh;
      if (piece.number() < 0 && piece.text().contains(manner.lineBreak()) && isSpaced(span)) {
        above = manner.lineBreak() + fresh;
      }
      written.append(above).append(piece.text());
    }
    written.append(commentsOfGone(span, passed, span.pieces().size(), there));
    return written.toString().stripLeading();
  }

  /** Whether blank lines stand between pieces. */
  private boolean isSpaced(Span span) {
    return IntStream.range(1, span.pieces().size())
        .mapToObj(i -> above(span, i))
        .anyMatch(above -> (above + "x").lines().skip(1).anyMatch(String::isBlank));
  }

  /** What stands above the pieces of some numbers that are gone, where it is a comment. */
  private String commentsOfGone(Span span, int from, int to, List<Integer> there) {
    StringBuilder comments = new StringBuilder();
    for (int i = from; i < to; i++) {
      String above = above(span, i);
      if (!there.contains(i) && above.indexOf('#') >= 0) {
        comments.append(above.stripTrailing());
      }
    }
    return comments.toString();
  }

  /** From the end of the line of the piece before to the beginning of this one. */
  private String above(Span span, int number) {
    return number == 0
        ? ""
        : text.substring(lineEnd(span.pieces().get(number - 1).end()), begin(span, number));
  }

  private int begin(Span span, int number) {
    return span.keys().isEmpty()
        ? dash(span.pieces().get(number))
        : span.keys().get(number).start();
  }

  /** The dash before an item. */
  private int dash(Span item) {
    int dash = item.start() - 1;
    while (dash >= 0 && Character.isWhitespace(text.charAt(dash))) {
      dash--;
    }
    if (dash < 0 || text.charAt(dash) != '-') {
      throw new InvalidInput(
          source.placeOf(item.start()), "this stands apart from its dash; edit it by hand");
    }
    return dash;
  }

  /** Pieces within brackets, with commas between. */
  private String inBrackets(Span span, List<Piece> pieces) {
    if (pieces.isEmpty()) {
      return text.charAt(span.start()) + "" + text.charAt(span.end() - 1);
    }
    StringBuilder written = new StringBuilder();
    int last = span.pieces().size() - 1;
    written.append(text, span.start(), flowBegin(span, 0));
    for (int i = 0; i < pieces.size(); i++) {
      int number = pieces.get(i).number();
      if (i > 0) {
        written.append(last == 0 ? ", " : number > 0 ? lead(span, number) : bareLead(span, last));
      }
      written.append(pieces.get(i).text());
    }
    return written.append(text, span.pieces().get(last).end(), span.end()).toString();
  }

  /** The comma before a piece with what is around it. */
  private String lead(Span span, int number) {
    return text.substring(span.pieces().get(number - 1).end(), flowBegin(span, number));
  }

  /** The same without comments. */
  private String bareLead(Span span, int number) {
    String lead = lead(span, number);
    int lastLine = Math.max(lead.lastIndexOf('\n'), lead.lastIndexOf('\r'));
    return lead.indexOf('#') < 0 ? lead : "," + manner.lineBreak() + lead.substring(lastLine + 1);
  }

  private int flowBegin(Span span, int number) {
    return span.keys().isEmpty()
        ? span.pieces().get(number).start()
        : span.keys().get(number).start();
  }

  /** How many characters stand before an index on its line. */
  private int column(int index) {
    int start = index;
    while (start > 0 && text.charAt(start - 1) != '\n' && text.charAt(start - 1) != '\r') {
      start--;
    }
    return text.codePointCount(start, index);
  }
}
