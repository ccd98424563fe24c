package rillwright.cli.file.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a file says of a job besides its water.
 *
 * @param details for whom and where
 * @param points remarks at points, in the order of the file
 * @param lines remarks at lines, likewise
 */
public record JobPapers(JobDetails details, List<Remark> points, List<Remark> lines) {
  public JobPapers {
    points = List.copyOf(points);
    lines = List.copyOf(lines);
  }

  /** What is remarked at a point. */
  public Optional<Remark> findAtPoint(String name) {
    return points.stream().filter(remark -> remark.at().equals(name)).findFirst();
  }

  /** All photographs, each as often as it is named. */
  public List<Photo> photos() {
    return Stream.concat(points.stream(), lines.stream())
        .flatMap(remark -> remark.photos().stream())
        .toList();
  }
}
