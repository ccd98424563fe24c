package rillwright.cli.file.job;

import java.time.LocalDate;
import java.util.Optional;

/**
 * For whom and where a job is done, as far as the file says.
 *
 * @param firm that does the work
 * @param customer for whom
 * @param address where
 * @param date of the file
 */
public record JobDetails(
    Optional<String> firm,
    Optional<String> customer,
    Optional<String> address,
    Optional<LocalDate> date) {
  /** Nothing said. */
  public static final JobDetails NONE =
      new JobDetails(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
