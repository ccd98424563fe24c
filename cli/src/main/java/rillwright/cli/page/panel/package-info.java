/** The studies as panels of the page, a class each, and the work that they do meanwhile. */
package rillwright.cli.page.panel;
