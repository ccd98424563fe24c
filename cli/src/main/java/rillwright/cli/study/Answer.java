package rillwright.cli.study;

import java.util.List;
import rillwright.cli.file.site.Running;

/** What a study tells of a job. */
public interface Answer {
  /** The job. */
  Job job();

  /** Its title, as written. */
  default String title() {
    return job().title();
  }

  /** What was changed in its file, as written. */
  default List<String> changes() {
    return job().changes();
  }

  /** How long its pumps run and what electricity costs. */
  default Running running() {
    return job().running();
  }
}
