/** What the page shows of a job, as pieces of HTML. Changes nothing. */
package rillwright.cli.page.view;
