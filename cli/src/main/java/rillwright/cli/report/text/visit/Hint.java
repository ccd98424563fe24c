package rillwright.cli.report.text.visit;

import rillwright.cli.report.units.VisitTools;
import rillwright.cli.report.weak.RiskWords;

/** Notes on readings; in the order in which it is shown. */
enum Hint {
  HANDS(
      "Electricity and water: switch the pump off and unplug it before hands go in; never reach in"
          + " while it runs. "
          + RiskWords.FROM_THE_EDGE
          + ". Wiring, its ground-fault (GFCI or RCD) protection and clamp-meter work are for a"
          + " qualified"
          + " electrician, licensed where the law requires it."),
  OPEN_WATER(
      "Deep or open water drowns small children: keep watch while covers and grates are off."),
  BANDS(
      "Between: the expected figure, give or take the usual error of the reading (common"
          + " practice) and, at a crest, of the formula. A reading outside means that the job"
          + " differs from the file: check there first, before you change anything. One inside"
          + " says no more than that the two agree."),
  TOPPED_UP(
      "Stream: these hold once it has filled and what feeds it is topped up to its level at rest;"
          + " what was added comes back at a stop and may run over."),
  TIMED(
      "Timed fill: fix a gutter for the whole fall with the water off; swing it over the bucket"
          + " from the edge once it runs evenly. Time three fills; measure the bucket or barrel:"
          + " many do not hold what they say."),
  REFILL(
      "Too fast for a bucket: switch off, bail a pool down by a measured depth, switch on, and time"
          + " it from the first water until it spills. Flow = area x depth / time."),
  CREST(
      "Depths: read a ruler every {spacing} along the crest and take the mean. The ruler's part of"
          + " the band is {error}; the rest is the error of the weir formula, which careful reading"
          + " does not make smaller."),
  LEVEL(
      "Level: from the edge lay a straightedge and a spirit level across, measure down to both"
          + " waters and subtract."),
  SHUT_OFF(
      "Valve shut: ten seconds at most, never with soft hose in the line (glued flexible PVC"
          + " counts as pipe), never with a positive-displacement pump; open it slowly."),
  PUMP_OFF("Pump off: read once the water stands still."),
  HOLDS(
      "Pump off: a pressure that stands above 0 and keeps falling says that a check valve leaks."),
  WATTS("Watts with a plug-in meter that stays dry; amps times volts is no substitute.");

  private final String sentence;

  Hint(String sentence) {
    this.sentence = sentence;
  }

  String sentence(VisitTools tools) {
    return sentence.replace("{spacing}", tools.spacing()).replace("{error}", tools.rulerError());
  }
}
