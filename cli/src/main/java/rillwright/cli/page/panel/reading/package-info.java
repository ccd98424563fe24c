/** What can be read and seen at a job, to be entered on the page. */
package rillwright.cli.page.panel.reading;
