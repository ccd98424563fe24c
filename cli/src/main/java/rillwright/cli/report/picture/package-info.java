/** Pictures of a project's curves: what is drawn, in the words and units of the project. */
package rillwright.cli.report.picture;
