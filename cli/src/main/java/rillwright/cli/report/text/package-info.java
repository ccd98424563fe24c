/**
 * Text for people: pages of at most 100 columns, tables, paragraphs, ink; words for parts and
 * points. Whatever stands in a user's file is made harmless here. Uses {@code cli.wording}, {@code
 * report.units} and the solver's network.
 */
package rillwright.cli.report.text;
