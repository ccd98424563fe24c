package rillwright.cli.study.mend.change;

/** A kind of change to one thing. */
public enum Action {
  TURN_VALVE(Work.VALVE, "valve"),
  OPEN_VALVE(Work.VALVE, "valve"),
  THROTTLE(Work.VALVE, "valve"),
  ADD_VALVE(Work.FITTING, "new valve"),
  CLEAN(Work.CLEANING, "cleaning"),
  LARGER_VALVE(Work.FITTING, "fitting"),
  FREER_FITTING(Work.FITTING, "fitting"),
  SPEED(Work.PUMP, "pump speed"),
  MORE_PARALLEL(Work.PUMP, "more pumps"),
  MORE_IN_SERIES(Work.PUMP, "more pumps"),
  OTHER_PUMP(Work.PUMP, "other pump"),
  WIDER_MOUTH(Work.SKIMMER, "skimmer"),
  LOWER_SILL(Work.SKIMMER, "skimmer"),
  ONE_MORE_SKIMMER(Work.POND, "skimmer"),
  DEEPER_INTAKE(Work.SKIMMER, "intake"),
  OTHER_CREST(Work.CREST, "crest"),
  OTHER_WIDTH(Work.CREST, "crest"),
  FULLER(Work.LEVEL, "water level"),
  HIGHER_OVERFLOW(Work.OVERFLOW, "overflow"),
  LARGER_POND(Work.POND, "pond"),
  PIPE(Work.PIPE, "pipe"),
  SECOND_LINE(Work.PIPE, "second line");

  private final Work work;
  private final String kind;

  Action(Work work, String kind) {
    this.work = work;
    this.kind = kind;
  }

  /** What has to be done. */
  public Work work() {
    return work;
  }

  /** The class of changes that it is one of, for programs. */
  public String kind() {
    return kind;
  }
}
