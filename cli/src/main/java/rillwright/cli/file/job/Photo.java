package rillwright.cli.file.job;

import java.util.Optional;

/**
 * A photograph that a project names.
 *
 * @param path as written
 * @param format by its first bytes
 * @param bytes how large its file is
 */
public record Photo(String path, Format format, long bytes) {
  /** What photographs may be. */
  public enum Format {
    JPEG("image/jpeg", 0xff, 0xd8, 0xff),
    PNG("image/png", 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n');

    private final String mediaType;
    private final String start;

    Format(String mediaType, int... first) {
      this.mediaType = mediaType;
      this.start = new String(first, 0, first.length);
    }

    /** The name of the format on the web. */
    public String mediaType() {
      return mediaType;
    }

    /** The format of a file that begins so; empty if it is neither. */
    static Optional<Format> of(byte[] first) {
      for (Format format : values()) {
        boolean same = first.length >= format.start.length();
        for (int i = 0; same && i < format.start.length(); i++) {
          same = Byte.toUnsignedInt(first[i]) == format.start.charAt(i);
        }
        if (same) {
          return Optional.of(format);
        }
      }
      return Optional.empty();
    }
  }
}
