package rillwright.cli.page.desk;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Unsaved changes as they are kept beside the file.
 *
 * @param process that keeps them
 * @param project the text of the job with them
 */
record Draft(long process, String project) {
  private static final Pattern HEAD =
      Pattern.compile("# Unsaved changes, kept by the page of process (\\d{1,18})\n");

  /** What stands in the draft's file; empty if that is no draft. */
  static Optional<Draft> read(String text) {
    Matcher head = HEAD.matcher(text);
    return head.lookingAt()
        ? Optional.of(new Draft(Long.parseLong(head.group(1)), text.substring(head.end())))
        : Optional.empty();
  }

  /** What is to stand in the draft's file. */
  String text() {
    return "# Unsaved changes, kept by the page of process " + process + "\n" + project;
  }

  /** Whether the page that keeps them is another one that still runs. */
  boolean isAnothers() {
    return process != ProcessHandle.current().pid()
        && ProcessHandle.of(process).filter(ProcessHandle::isAlive).isPresent();
  }
}
