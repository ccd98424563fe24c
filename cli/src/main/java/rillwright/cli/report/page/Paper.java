package rillwright.cli.report.page;

/** On what a page is printed. */
public enum Paper {
  /** A4 or Letter. */
  SHEET,
  /** A card of A6 size, one for each heading that begins a new sheet. */
  CARD
}
