package rillwright.cli.packaging;

import java.util.Optional;
import org.objectweb.asm.Handle;

/**
 * Where a function is made.
 *
 * @param maker the class that makes it
 * @param body what it calls
 * @param name of the method that it calls
 * @param types what that method takes and returns, as a class file writes it
 */
record Site(String maker, String body, String name, String types) {
  private static final String MARK = "@lambda-proxy";

  /** The place of a function that a class makes. */
  static Site of(String maker, Handle body) {
    return new Site(maker, body.getOwner(), body.getName(), body.getDesc());
  }

  /** The place that a line of a list of classes names, if it names one. */
  static Optional<Site> of(String line) {
    String[] words = line.split(" ");
    return words.length > 8 && words[0].equals(MARK)
        ? Optional.of(new Site(words[1], words[6], words[7], words[8]))
        : Optional.empty();
  }
}
