package rillwright.cli.file.tree;

import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;

/** Finds where the pieces of a project's text begin and end. JSON is read as the YAML it is. */
public final class SpanReader {
  private final String text;
  private final boolean isPlain;

  private SpanReader(String text) {
    this.text = text;
    this.isPlain = text.codePointCount(0, text.length()) == text.length();
  }

  /**
   * The span of the whole tree.
   *
   * @param source a text that {@link TreeReader} reads
   * @throws InvalidInput if the ends of its pieces cannot be found
   */
  public static Span read(SourceText source) {
    // A tab may stand between the pieces of JSON and not of YAML; a space is as long.
    String text = source.isJson() ? source.text().replace('\t', ' ') : source.text();
    try {
      var compose = new Compose(YamlNotation.SETTINGS);
      return new SpanReader(source.text())
          .span(compose.composeReader(new WholeCharacters(text)).orElseThrow());
    } catch (YamlEngineException unreadable) {
      throw new InvalidInput(
          Place.whole(source.name()), "the ends of its values cannot be found; edit it by hand");
    }
  }

  private Span span(org.snakeyaml.engine.v2.nodes.Node node) {
    int start = index(node.getStartMark().orElseThrow());
    int end = index(node.getEndMark().orElseThrow());
    List<Span> keys = new ArrayList<>();
    List<Span> pieces = new ArrayList<>();
    if (node instanceof MappingNode map) {
      map.getValue().forEach(tuple -> enter(tuple, keys, pieces));
    } else if (node instanceof SequenceNode list) {
      list.getValue().forEach(item -> pieces.add(span(item)));
    } else if (node instanceof ScalarNode scalar && isBlockText(scalar)) {
      end = start + text.substring(start, end).stripTrailing().length();
    }
    boolean isBlock =
        node instanceof CollectionNode<?> collection
            && collection.getFlowStyle() == FlowStyle.BLOCK
            && !pieces.isEmpty();
    // The only pair of a map without braces, [run: 3 ft], is said to reach over its comma.
    boolean endsWithLastPiece = isBlock || (!keys.isEmpty() && text.charAt(start) != '{');
    int last = pieces.size() - 1;
    return new Span(start, endsWithLastPiece ? pieces.get(last).end() : end, isBlock, keys, pieces);
  }

  private static boolean isBlockText(ScalarNode scalar) {
    return scalar.getScalarStyle() == ScalarStyle.LITERAL
        || scalar.getScalarStyle() == ScalarStyle.FOLDED;
  }

  /** Adds an entry; what is read as one value is one here, too. */
  private void enter(NodeTuple tuple, List<Span> keys, List<Span> pieces) {
    Span key = span(tuple.getKeyNode());
    Span value = span(tuple.getValueNode());
    int last = pieces.size() - 1;
    if (last >= 0 && value.start() == value.end() && isAfterComma(pieces.get(last), key)) {
      pieces.set(last, pieces.get(last).endingAt(key.end()));
      return;
    }
    keys.add(key);
    pieces.add(value);
  }

  /** As {@link DecimalComma#wasSplitBy} knows it. */
  private boolean isAfterComma(Span number, Span key) {
    return number.end() + 1 == key.start()
        && number.pieces().isEmpty()
        && number.end() > number.start()
        && text.charAt(number.end()) == ','
        && isDigit(text.charAt(number.end() - 1))
        && isDigit(text.charAt(key.start()));
  }

  private static boolean isDigit(char character) {
    return character >= '0' && character <= '9';
  }

  private int index(Mark mark) {
    return isPlain ? mark.getIndex() : text.offsetByCodePoints(0, mark.getIndex());
  }
}
