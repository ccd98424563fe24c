/**
 * Changes to a project file's tree before it is mapped: {@code lines.intake.skimmer.clogged=40 %}.
 * Uses {@code tree}, {@code fault} and the shorthand of {@code part}.
 */
package rillwright.cli.file.change;
