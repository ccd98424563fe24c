package rillwright.curves.sheet.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/**
 * What a file's bytes say in UTF-8, with or without a byte-order mark.
 *
 * @param text as far as the bytes are UTF-8, without the mark
 * @param isWhole whether all of them are
 */
public record Utf8Text(String text, boolean isWhole) {
  /** Decodes bytes as far as they are UTF-8. */
  public static Utf8Text of(byte[] content) {
    int start = startsWith(content, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    ByteBuffer bytes = ByteBuffer.wrap(content, start, content.length - start);
    CharBuffer text = CharBuffer.allocate(bytes.remaining());
    CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(bytes, text, true);
    return new Utf8Text(text.flip().toString(), !result.isError());
  }

  /** Whether bytes begin with the mark of UTF-16. */
  public static boolean isUtf16(byte[] content) {
    return startsWith(content, 0xFE, 0xFF) || startsWith(content, 0xFF, 0xFE);
  }

  /** Whether a zero is among bytes, which no text has. */
  public static boolean hasZero(byte[] content) {
    for (byte octet : content) {
      if (octet == 0) {
        return true;
      }
    }
    return false;
  }

  private static boolean startsWith(byte[] content, int... start) {
    if (content.length < start.length) {
      return false;
    }
    for (int i = 0; i < start.length; i++) {
      if ((content[i] & 0xFF) != start[i]) {
        return false;
      }
    }
    return true;
  }
}
