/** What the build of packages writes beside the program: completions and manual pages. */
package rillwright.cli.packaging;
