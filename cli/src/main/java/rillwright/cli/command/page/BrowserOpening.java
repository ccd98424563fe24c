package rillwright.cli.command.page;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.util.List;
import java.util.Locale;

/** Opens an address in the browser that the user has chosen for this machine. */
final class BrowserOpening {
  private BrowserOpening() {}

  /** Opens it; where that cannot be done, the address that was printed is all. */
  static void open(String address) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    List<String> command =
        system.startsWith("mac")
            ? List.of("open", address)
            : system.startsWith("windows")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
                : List.of("xdg-open", address);
    try {
      new ProcessBuilder(command)
          .redirectOutput(Redirect.DISCARD)
          .redirectError(Redirect.DISCARD)
          .start();
    } catch (IOException noSuchProgram) {
      return;
    }
  }
}
