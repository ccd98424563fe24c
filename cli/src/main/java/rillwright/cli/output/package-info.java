/** Files that are written whole or not at all, and never over what was read. */
package rillwright.cli.output;
