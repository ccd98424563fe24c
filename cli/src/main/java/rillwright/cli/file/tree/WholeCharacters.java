package rillwright.cli.file.tree;

import java.io.Reader;
import java.util.Objects;

/**
 * A text in pieces of some hundred characters, none of which ends within a pair of surrogates: the
 * YAML reader fails where its buffer of 1,025 would end there.
 */
final class WholeCharacters extends Reader {
  private static final int LONGEST_PIECE = 1000;

  private final String text;
  private int next;

  WholeCharacters(String text) {
    this.text = text;
  }

  @Override
  public int read(char[] into, int offset, int length) {
    Objects.checkFromIndexSize(offset, length, into.length);
    if (next == text.length()) {
      return -1;
    }
    int end = Math.min(text.length(), next + Math.min(length, LONGEST_PIECE));
    if (end - next > 1 && Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    text.getChars(next, end, into, offset);
    int read = end - next;
    next = end;
    return read;
  }

  @Override
  public void close() {
    // Nothing is held.
  }
}
