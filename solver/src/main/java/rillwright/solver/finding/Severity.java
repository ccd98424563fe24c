package rillwright.solver.finding;

/** How grave a finding is, the gravest first. */
public enum Severity {
  /** Somebody may be hurt, or a pump ruined. */
  DANGER,

  /** The job does not do what it should, or is not described as it can be. */
  PROBLEM,

  /** It works; something would make it better. */
  ADVICE,

  /** Good to know. */
  NOTE
}
