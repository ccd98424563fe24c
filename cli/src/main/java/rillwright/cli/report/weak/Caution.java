package rillwright.cli.report.weak;

/** A short caution that stands beside a remedy or a reading. */
public enum Caution {
  NONE(""),
  HANDS(
      "Switch the pump off and unplug or isolate it before anyone reaches in.",
      "Shut the line before anyone reaches in."),
  ELECTRICIAN(
      "Switch the circuit off; wiring and controllers are for a qualified electrician, licensed"
          + " where the law requires it. Never defeat ground-fault protection (GFCI or RCD) that trips."),
  DIGGING(
      "Have buried services located before you dig. Any trench can collapse; follow local rules"
          + " before entering it."),
  OPEN_WATER("Open water drowns small children: keep watch while covers and grates are off."),
  UPHILL(
      "Water held uphill: keep the overflow free and the bank firm; a large volume is an engineer's"
          + " to judge."),
  PRESSURE(
      "Stop the pump and let the pressure off before you open a union; hose under pressure kicks.",
      "Shut the line and let the pressure off before you open a union; hose under pressure kicks."),
  SUCTION(
      "Switch the pump off and unplug or isolate it before anyone reaches in, and never leave an"
          + " open suction where a person can reach it.");

  private final String pumped;
  private final String byLevel;

  Caution(String pumped, String byLevel) {
    this.pumped = pumped;
    this.byLevel = byLevel;
  }

  Caution(String sentence) {
    this(sentence, sentence);
  }

  /**
   * The caution; empty for none.
   *
   * @param isPumped whether there is a pump in the job, and so something to switch off
   */
  public String sentence(boolean isPumped) {
    return isPumped ? pumped : byLevel;
  }
}
