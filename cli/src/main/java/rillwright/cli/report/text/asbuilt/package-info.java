/** What readings say of what was not known, for people. */
package rillwright.cli.report.text.asbuilt;
