/** Pieces of HTML, every text in them escaped. */
package rillwright.cli.page.html;
