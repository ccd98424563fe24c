package rillwright.cli.wording;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What the trade calls things that go by another name here; common practice, no source. */
public final class TradeNames {
  /** Longer names before those that they hold. */
  private static final List<Map.Entry<String, String>> NAMES =
      List.of(
          Map.entry("long radius bend", "sweep 90"),
          Map.entry("long radius elbow", "sweep 90"),
          Map.entry("swept bend", "sweep 90"),
          Map.entry("return bend", "return 180"),
          Map.entry("u bend", "return 180"),
          Map.entry("quarter bend", "elbow 90"),
          Map.entry("bend", "elbow"),
          Map.entry("ell", "elbow"),
          Map.entry("knee", "elbow"),
          Map.entry("slide valve", "knife gate"),
          Map.entry("slide", "knife gate"),
          Map.entry("sluice valve", "gate"),
          Map.entry("sluice", "gate"),
          Map.entry("quarter turn", "ball"),
          Map.entry("isolation valve", "ball"),
          Map.entry("wafer", "butterfly"),
          Map.entry("non-return", "swing"),
          Map.entry("nonreturn", "swing"),
          Map.entry("one-way", "swing"),
          Map.entry("flap", "swing"),
          Map.entry("foot", "foot valve hinged"),
          Map.entry("y strainer", "strainer wye"),
          Map.entry("basket strainer", "strainer basket"),
          Map.entry("leaf basket", "strainer basket"),
          Map.entry("tee straight", "tee run"),
          Map.entry("straight tee", "tee run"),
          Map.entry("t piece", "tee branch"),
          Map.entry("t-piece", "tee branch"),
          Map.entry("y piece", "wye 45"),
          Map.entry("y-piece", "wye 45"),
          Map.entry("hose barb", "barbed adapter"),
          Map.entry("hose tail", "barbed adapter"),
          Map.entry("tank connector", "bulkhead"),
          Map.entry("coupler", "coupling"),
          Map.entry("socket", "coupling"),
          Map.entry("bushing", "reducer"),
          Map.entry("bush", "reducer"),
          Map.entry("increaser", "enlargement"),
          Map.entry("expander", "enlargement"),
          Map.entry("upvc", "PVC-U PN 10"),
          Map.entry("mdpe", "PE100 SDR 11"),
          Map.entry("hdpe", "PE100 SDR 17"),
          Map.entry("poly pipe", "polyethylene"),
          Map.entry("sch 40", "PVC schedule 40"),
          Map.entry("sch 80", "PVC schedule 80"),
          Map.entry("flex", "flexible"),
          Map.entry("acrylic", "plastic"),
          Map.entry("slate", "stone"),
          Map.entry("rock", "stone"),
          Map.entry("copper", "metal"),
          Map.entry("steel", "metal"));

  private TradeNames() {}

  /** A name in the words of this program; as it is if the trade's are the same. */
  public static String here(String written) {
    String words = " " + written.strip().toLowerCase(Locale.ROOT) + " ";
    return NAMES.stream()
        .filter(name -> words.contains(" " + name.getKey() + " "))
        .findFirst()
        .map(name -> words.replace(" " + name.getKey() + " ", " " + name.getValue() + " ").strip())
        .orElse(written);
  }

  /** Known names for what the trade calls something; none if it has no other name for it. */
  static List<String> meant(String written, Collection<String> known) {
    String name = here(written);
    if (name.equals(written)) {
      return List.of();
    }
    List<String> same = known.stream().filter(name::equalsIgnoreCase).toList();
    return same.isEmpty() ? AlikeWords.in(name, known) : same;
  }
}
