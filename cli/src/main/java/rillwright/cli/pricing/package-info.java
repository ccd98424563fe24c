/** What material costs at the prices of a project. Uses {@code catalogue} and {@code file.site}. */
package rillwright.cli.pricing;
