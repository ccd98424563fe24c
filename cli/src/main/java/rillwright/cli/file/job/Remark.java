package rillwright.cli.file.job;

import java.util.List;

/**
 * What is noted and photographed at a point or line.
 *
 * @param at its name
 * @param notes as written
 * @param photos of it
 */
public record Remark(String at, List<String> notes, List<Photo> photos) {
  public Remark {
    notes = List.copyOf(notes);
    photos = List.copyOf(photos);
  }
}
