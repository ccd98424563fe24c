package rillwright.cli.hardening;

import java.nio.file.Path;
import java.util.List;

/**
 * A file and what is asked of it.
 *
 * @param file where it is to lie
 * @param content of it
 * @param command its words
 */
record FuzzCase(Path file, Content content, List<String> command) {
  /** Bytes, which records compare by identity. */
  interface Content {
    byte[] bytes();
  }

  byte[] bytes() {
    return content.bytes();
  }
}
