package rillwright.cli.report.weak;

/** Letters that stand for causes. */
public final class Letters {
  private static final int COUNT = 26;

  private Letters() {}

  /** A, B, …, Z, AA, … by number, from 0. */
  public static String of(int number) {
    return number < COUNT
        ? String.valueOf((char) ('A' + number))
        : of(number / COUNT - 1) + of(number % COUNT);
  }

  /** What a pair of causes stands under, by number, from 0: P1. */
  public static String ofPair(int number) {
    return "P" + (number + 1);
  }
}
