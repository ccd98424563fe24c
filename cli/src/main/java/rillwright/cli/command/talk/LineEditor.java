package rillwright.cli.command.talk;

import java.io.IOError;
import java.io.IOException;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.completer.StringsCompleter;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.impl.exec.ExecTerminalProvider;
import rillwright.cli.interview.Conversation;
import rillwright.cli.interview.Dialogue;
import rillwright.cli.interview.Question;
import rillwright.cli.report.page.terminal.Wrapping;

/** A terminal on which the answer can be edited, and completed with Tab where words are known. */
public final class LineEditor implements Dialogue, AutoCloseable {
  /**
   * By programs of the system, without code of its own for each: named so that the jar keeps it.
   */
  private static final String PROVIDER =
      ExecTerminalProvider.class.getPackageName().endsWith(".exec") ? "exec" : "";

  private static final int WIDEST = 100;
  private static final int NARROWEST = 40;

  private final Terminal terminal;

  private LineEditor(Terminal terminal) {
    this.terminal = terminal;
  }

  /** The terminal of this process; empty if it has none that can be edited on. */
  public static Optional<LineEditor> ofTerminal() {
    try {
      Terminal terminal =
          TerminalBuilder.builder()
              .system(true)
              .provider(PROVIDER)
              .dumb(false)
              .graphemeCluster(false) // asks the terminal; its answer would mix with what is typed
              .build();
      if (terminal.getSize().getColumns() > NARROWEST) {
        return Optional.of(new LineEditor(terminal));
      }
      terminal.close();
      return Optional.empty();
    } catch (IOException | IllegalStateException none) {
      return Optional.empty();
    }
  }

  @Override
  public void say(String paragraph) {
    terminal.writer().println();
    Wrapping.lines(paragraph, width()).forEach(terminal.writer()::println);
    terminal.flush();
  }

  private int width() {
    try {
      return Math.max(NARROWEST, Math.min(WIDEST, terminal.getSize().getColumns() - 1));
    } catch (IOError interrupted) {
      return NARROWEST;
    }
  }

  @Override
  public Optional<String> ask(Question question, String suggestion) {
    LineReader reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .completer(new StringsCompleter(question.choices()))
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.BRACKETED_PASTE, false)
            .build();
    try {
      return Optional.of(reader.readLine("[" + suggestion + "] ").strip());
    } catch (EndOfFileException | UserInterruptException | IOError left) {
      return Optional.of(Conversation.QUIT); // an interrupt may meet the program that sets the line
    }
  }

  @Override
  public void close() {
    try {
      terminal.close();
    } catch (IOException | IOError alreadyGone) {
      terminal.flush();
    }
  }
}
