package rillwright.cli.page.desk;

/**
 * A state of the text that can be gone back to.
 *
 * @param text of the project
 * @param done what made it of the one before, for people: {@code lines.supply.pipe.size=3 in}
 */
record Version(String text, String done) {}
