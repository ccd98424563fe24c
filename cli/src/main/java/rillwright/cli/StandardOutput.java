package rillwright.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** A standard stream: UTF-8 on every system, and it remembers what went wrong when writing. */
final class StandardOutput extends FilterOutputStream {
  private static final List<String> NOBODY_READS =
      List.of("Broken pipe", "Bad file descriptor", "Stream Closed");

  private Optional<IOException> trouble = Optional.empty();

  private StandardOutput(FileDescriptor stream) {
    super(new BufferedOutputStream(new FileOutputStream(stream), 1 << 16));
  }

  static StandardOutput to(FileDescriptor stream) {
    return new StandardOutput(stream);
  }

  PrintWriter writer() {
    return new PrintWriter(new OutputStreamWriter((OutputStream) this, StandardCharsets.UTF_8));
  }

  @Override
  public void write(byte[] bytes, int offset, int length) {
    attempt(() -> out.write(bytes, offset, length));
  }

  @Override
  public void write(int octet) {
    attempt(() -> out.write(octet));
  }

  @Override
  public void flush() {
    attempt(out::flush);
  }

  private interface Step {
    void run() throws IOException;
  }

  private void attempt(Step step) {
    if (trouble.isPresent()) {
      return;
    }
    try {
      step.run();
    } catch (IOException e) {
      trouble = Optional.of(e);
    }
  }

  /** What went wrong, unless it is only that nobody reads, or never did. */
  Optional<String> trouble() {
    return trouble
        .map(e -> String.valueOf(e.getMessage()))
        .filter(message -> NOBODY_READS.stream().noneMatch(message::contains));
  }
}
