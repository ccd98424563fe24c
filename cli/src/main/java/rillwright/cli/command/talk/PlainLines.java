package rillwright.cli.command.talk;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Optional;
import rillwright.cli.interview.Dialogue;
import rillwright.cli.interview.Question;
import rillwright.cli.report.page.terminal.Wrapping;

/** Questions as lines, answers as lines: without a terminal, in a pipe, on a dumb screen. */
public final class PlainLines implements Dialogue {
  /** Of paragraphs, in columns: narrow enough for any screen, as none is asked. */
  private static final int WIDTH = 60;

  /** Of a line that is longer the rest is passed over: it is no answer. */
  private static final int LONGEST_LINE = 1000;

  private final Reader in;
  private final PrintWriter out;
  private boolean afterReturn;

  /** Lines of a reader, questions to a writer. */
  public PlainLines(Reader in, PrintWriter out) {
    this.in = in;
    this.out = out;
  }

  @Override
  public void say(String paragraph) {
    out.println();
    Wrapping.lines(paragraph, WIDTH).forEach(out::println);
    out.flush();
  }

  @Override
  public Optional<String> ask(Question question, String suggestion) {
    out.print("[" + suggestion + "] ");
    out.flush();
    Optional<String> line = line();
    if (line.isEmpty()) {
      out.println();
    }
    return line.map(String::strip);
  }

  private Optional<String> line() {
    StringBuilder line = new StringBuilder();
    try {
      for (int next = in.read(); next >= 0; next = in.read()) {
        boolean halfOfLineEnd = next == '\n' && afterReturn;
        afterReturn = next == '\r';
        if (halfOfLineEnd) {
          continue;
        }
        if (next == '\n' || next == '\r') {
          return Optional.of(line.toString());
        }
        if (line.length() < LONGEST_LINE) {
          line.append((char) next);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return line.isEmpty() ? Optional.empty() : Optional.of(line.toString());
  }
}
