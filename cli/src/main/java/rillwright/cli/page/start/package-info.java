/** The page of a job that is still to be made: the questions of {@code new} as a form. */
package rillwright.cli.page.start;
