/** The command line: project files, commands and reports. */
package rillwright.cli;
