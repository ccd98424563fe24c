/** What every panel of the page has: its form, what was filled in, its words. */
package rillwright.cli.page.panel.form;
