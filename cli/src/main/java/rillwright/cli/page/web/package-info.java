/**
 * A page's way to the browser on the same machine: alone in knowing the JDK's HTTP server. It knows
 * nothing of projects.
 */
package rillwright.cli.page.web;
