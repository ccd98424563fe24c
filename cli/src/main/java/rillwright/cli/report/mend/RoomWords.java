package rillwright.cli.report.mend;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Room;

/** How much ponds may fall while their pump runs. */
public final class RoomWords {
  private static final double SECONDS_PER_DAY = 86400;

  /** Fewer days than this are shown in hours. */
  private static final double FEW_DAYS = 2;

  private RoomWords() {}

  /** Whether it is to be said in an answer: where a pond is in need, or has little room then. */
  public static boolean areSaid(MendAnswer answer) {
    return answer.needs().stream().anyMatch(Need::isOfPond)
        || areLittle(answer.rooms())
        || answer.remedies().stream().anyMatch(remedy -> areLittle(remedy.rooms()));
  }

  /** Whether some pond has little. */
  public static boolean areLittle(List<Room> rooms) {
    return rooms.stream().anyMatch(Room::isLittle);
  }

  /** In sentences, led by a space. */
  static String sentences(List<Room> rooms, ShownUnits units) {
    return rooms.stream().map(room -> sentence(room, units)).collect(Collectors.joining());
  }

  private static String sentence(Room room, ShownUnits units) {
    return " While it runs, \""
        + room.pond().value()
        + "\" then has "
        + (room.isLittle() ? "only " : "")
        + units.volume(room.volumeM3())
        + " above the level at which it starves"
        + room.days().stream()
            .mapToObj(days -> ", " + lasts(days, units) + " without topping up.")
            .findFirst()
            .orElse("; evaporation is not in the file.");
  }

  /** What the cells mean. */
  public static String legend(MendAnswer answer) {
    return " Room: the water of a pond above the level at which it starves while it runs"
        + (hasDays(answer)
            ? ", and how long evaporation and splash take to use it up without topping up"
            : "; evaporation is not in the file and takes of it too")
        + ". It is called little where the water in transit, which is an estimate, may be more by"
        + " as much"
        + (hasDays(answer) ? ", or where it lasts less than a week." : ".");
  }

  private static boolean hasDays(MendAnswer answer) {
    return answer.remedies().stream()
        .flatMap(remedy -> remedy.rooms().stream())
        .anyMatch(room -> room.days().isPresent());
  }

  /** In a cell. */
  public static String cell(List<Room> rooms, ShownUnits units) {
    return rooms.stream()
        .map(
            room ->
                (rooms.size() > 1 ? "\"" + room.pond().value() + "\" " : "") + cell(room, units))
        .collect(Collectors.joining("; "));
  }

  private static String cell(Room room, ShownUnits units) {
    String volume = units.volume(room.volumeM3());
    return volume.equals(units.volume(0))
        ? "none"
        : (room.isLittle() ? "little: " : "")
            + volume
            + room.days().stream()
                .mapToObj(days -> ", " + lasts(days, units))
                .findFirst()
                .orElse("");
  }

  private static String lasts(double days, ShownUnits units) {
    return days < FEW_DAYS ? units.duration(days * SECONDS_PER_DAY) : units.days(days);
  }
}
