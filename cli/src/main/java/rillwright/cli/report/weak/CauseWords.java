package rillwright.cli.report.weak;

import java.util.Arrays;

/**
 * Words for causes: what is the matter, the thing in short, what it looks like, the usual remedy
 * and its caution; common practice, no source.
 */
public enum CauseWords {
  SKIMMER_CLOGGED(
      "skimmer clogged",
      "the skimmer is clogged",
      "a clogged skimmer",
      "Clear leaves and plants from the mouth, free its door, check that the pond is at its mark.",
      Caution.HANDS,
      CauseSizeWords.PASSES),
  NET_CLOGGED(
      "net clogged",
      "the net downstream of the skimmer is clogged",
      "a clogged net",
      "Clean the net or mat: water stands higher upstream of it. A larger one clogs later.",
      Caution.HANDS,
      CauseSizeWords.SHARE_CLOGGED),
  INTAKE_CAGE_PACKED(
      "intake cage packed",
      "the pump's intake cage is packed",
      "a packed intake cage",
      "Lift the pump out and clean its cage of string algae and mulch; stand it off the floor.",
      Caution.HANDS,
      CauseSizeWords.LOSS),
  PUMP_WORN(
      "pump worn",
      "the pump is worn",
      "a worn pump",
      "Open the pump: clear its vanes, replace a worn impeller or the pump.",
      Caution.HANDS,
      CauseSizeWords.HEAD_LEFT),
  PUMP_SLOW(
      "pump slow",
      "the pump runs slow",
      "a slow pump",
      "Look at the speed controller's setting; have the voltage at the running pump measured.",
      Caution.ELECTRICIAN,
      CauseSizeWords.SPEED_LEFT),
  PUMP_BACKWARDS(
      "pump turning backwards",
      "the pump turns backwards",
      "a pump turning backwards",
      "Have two phases of a three-phase pump swapped, or the winding of a single-phase one"
          + " checked.",
      Caution.ELECTRICIAN,
      CauseSizeWords.HEAD_LEFT),
  AIR_IN_PUMP(
      "air in the pump",
      "the pump draws air",
      "air in the pump",
      "Raise the water over the intake, break the vortex, seal lid and unions of a suction line.",
      Caution.SUCTION,
      CauseSizeWords.HEAD_LEFT),
  LOW_VOLTAGE(
      "low voltage",
      "the pump gets too little voltage",
      "low voltage",
      "Have the voltage measured at the running pump: a long or thin cord, a bad joint. Then"
          + " shorten the way or have a thicker cable laid.",
      Caution.ELECTRICIAN,
      CauseSizeWords.SPEED_LEFT),
  OTHER_PUMP(
      "other pump",
      "another pump stands there than the file says",
      "another pump",
      "Read the pump's nameplate; write the pump that stands there into the file, then look again.",
      Caution.HANDS,
      CauseSizeWords.NONE),
  VALVE_MOVED(
      "valve not where the file says",
      "a valve is not where the file says",
      "a valve not where the file says",
      "Set it back and mark the handle; a handle may have slipped on its stem.",
      Caution.NONE,
      CauseSizeWords.NONE),
  CHECK_VALVE_STUCK(
      "check valve stuck",
      "the check valve sticks",
      "a stuck check valve",
      "Open the union and look: sticks, snails, a broken flap. A full-bore flapper clogs least.",
      Caution.PRESSURE,
      CauseSizeWords.LOSS),
  HOSE_KINKED(
      "hose kinked",
      "the hose is kinked or crushed",
      "a kinked hose",
      "Walk the line, look where rock or soil was moved; straighten or replace the piece.",
      Caution.DIGGING,
      CauseSizeWords.LOSS),
  AIR_AT_HIGH_POINT(
      "air at a high point",
      "air stands at the high point",
      "air at the high point",
      "Purge it by a minute at full flow, or through a valve that is closed while it runs; lay the"
          + " pipe lower there. A vent helps only where no suction is: it ends a siphon.",
      Caution.NONE,
      CauseSizeWords.LOSS),
  FILTER_CLOGGED(
      "filter clogged",
      "the filter is clogged",
      "a clogged filter",
      "Backwash or clean it; read the pressure upstream and downstream when it is clean.",
      Caution.PRESSURE,
      CauseSizeWords.SHARE_CLOGGED),
  LOSS_CLOGGED(
      "loss clogged",
      "a part of the line is dirty or scaled",
      "a dirty part",
      "Open it and clean it: scale on the quartz of a UV lamp, dirt in a heater or strainer. Switch"
          + " a lamp off first.",
      Caution.PRESSURE,
      CauseSizeWords.TIMES_THE_HEAD),
  MATS_CLOGGED(
      "spill box mats clogged",
      "the mats in the spill box are clogged",
      "clogged spill box mats",
      "Inspect the box: wash the mats, check that no water runs over its back.",
      Caution.UPHILL,
      CauseSizeWords.HEAD_ADDED),
  PIPE_FOULED(
      "pipe fouled",
      "the pipe is fouled",
      "a fouled pipe",
      "Flush the line; rod only straight stretches without valves, from a cleanout; dark pipe grows"
          + " less.",
      Caution.PRESSURE,
      CauseSizeWords.BORE_LEFT),
  PIPE_SMALLER(
      "pipe smaller than drawn",
      "the pipe is smaller than drawn",
      "a smaller pipe",
      "Read the print on the pipe where it is exposed; a second pipe beside it helps most.",
      Caution.DIGGING,
      CauseSizeWords.NONE),
  MORE_LIFT(
      "more lift than drawn",
      "the water is lifted higher than drawn",
      "more lift",
      "Measure crest and pond with a level; lower the outlet, or design for the actual lift.",
      Caution.UPHILL,
      CauseSizeWords.HIGHER),
  LEAK(
      "leak",
      "the buried pipe leaks",
      "a leak",
      "Check whether the pond drops only while it runs; look for wet ground; test the line under"
          + " pressure.",
      Caution.DIGGING,
      CauseSizeWords.LOST),
  BYPASS_OPEN(
      "bypass open",
      "a bypass or drain is open",
      "an open bypass",
      "Walk every outlet and branch; shut it and mark the handle.",
      Caution.NONE,
      CauseSizeWords.LOST),
  IDLE_PUMP(
      "runs back through an idle pump",
      "water runs back through the idle pump",
      "water running back",
      "Fit a check valve downstream of the stopped pump, or shut its valve.",
      Caution.HANDS,
      CauseSizeWords.LOSS),
  POND_LOW(
      "pond low",
      "the pond is low",
      "a low pond",
      "Look whether it is at its mark. Top it up through an air gap, never with a hose under water;"
          + " then find the loss.",
      Caution.OPEN_WATER,
      CauseSizeWords.DEPTH_GONE),
  POND_LEAK(
      "pond leak",
      "the pond itself leaks",
      "a leaking pond",
      "Top it up to its mark, then let it fall with the pump off: where it stops the liner is open,"
          + " or a fitting through it leaks. Keep enough water for the fish.",
      Caution.OPEN_WATER,
      CauseSizeWords.DEPTH_GONE),
  STREAM_LEAK(
      "stream leak",
      "the stream loses water",
      "a leaking stream",
      "Compare a bucket at the box with one below; walk the liner's edge, reseat it, lift low"
          + " spots.",
      Caution.OPEN_WATER,
      CauseSizeWords.SHARE_LOST),
  BEHIND_THE_ROCKS(
      "water behind the rocks",
      "water runs behind the rocks",
      "water behind the rocks",
      "Look behind the sheet: seal between stone and liner with foam or mortar made for ponds. A"
          + " pond that does not drop says that this water comes back to it.",
      Caution.OPEN_WATER,
      CauseSizeWords.BEHIND),
  CREST_WIDER(
      "crest wider",
      "the crest runs wider than drawn",
      "a wider crest",
      "Measure the width that runs wet; narrow it with stones or foam, or give it more water.",
      Caution.NONE,
      CauseSizeWords.TIMES_AS_WIDE),
  CREST_NOT_LEVEL(
      "crest not level",
      "the crest is not level",
      "a crest out of level",
      "Lay the level along the crest and shim the low end.",
      Caution.NONE,
      CauseSizeWords.LOW_END),
  NOTHING_WRONG(
      "nothing wrong",
      "nothing is wrong: all is as the file says",
      "nothing wrong",
      "Compare what it gives with what was agreed.",
      Caution.NONE,
      CauseSizeWords.NONE),
  NONE_OF_THESE(
      "none of these",
      "no cause in the list fits",
      "none of these",
      "Read again what fits least, check the drawing against what stands there, think of two faults"
          + " at once.",
      Caution.NONE,
      CauseSizeWords.NONE);

  private final String name;
  private final String statement;
  private final String noun;
  private final String remedy;
  private final Caution caution;
  private final CauseSizeWords size;

  CauseWords(
      String name,
      String statement,
      String noun,
      String remedy,
      Caution caution,
      CauseSizeWords size) {
    this.name = name;
    this.statement = statement;
    this.noun = noun;
    this.remedy = remedy;
    this.caution = caution;
    this.size = size;
  }

  /** The words for a cause; throws if it has none. */
  public static CauseWords of(String cause) {
    return Arrays.stream(values())
        .filter(words -> words.name.equals(cause))
        .findFirst()
        .orElseThrow();
  }

  /** What is the matter: "the pump is worn". */
  public String statement() {
    return statement;
  }

  /** The same as a thing: "a worn pump". */
  public String noun() {
    return noun;
  }

  /** What is usually done about it. */
  public String remedy() {
    return remedy;
  }

  /** What to mind while it is done. */
  public Caution caution() {
    return caution;
  }

  /** How its size is shown. */
  public CauseSizeWords size() {
    return size;
  }
}
