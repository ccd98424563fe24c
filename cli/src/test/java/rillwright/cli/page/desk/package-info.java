/** What lies open on the live page. */
package rillwright.cli.page.desk;
