package rillwright.cli.wording;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Names of files in the letters that the locale of the shell has. */
public final class FileNames {
  private static final Charset LOCALE = locale();

  private FileNames() {}

  /** How Java writes names of files on this system, as the locale says. */
  private static Charset locale() {
    String name = System.getProperty("sun.jnu.encoding", "UTF-8");
    return Charset.isSupported(name) ? Charset.forName(name) : StandardCharsets.UTF_8;
  }

  /** Whether the locale can write a name; of one that it could not read neither. */
  public static boolean canWrite(String name) {
    return LOCALE.newEncoder().canEncode(name);
  }

  /** What is wrong with a name that cannot be that of a file here, and what would help. */
  public static String whyNot(String name) {
    return canWrite(name)
        ? "this cannot be the path of a file"
        : "the locale of this shell has not all letters of this name; set it to UTF-8, for example"
            + " LC_ALL=C.UTF-8";
  }
}
