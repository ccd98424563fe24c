/** The long section: what each place of a way is called, which figures it has, how it is drawn. */
package rillwright.cli.report.picture.section;
