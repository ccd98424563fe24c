/**
 * The project as a live page on this machine: {@code desk} is the job, {@code view} and {@code
 * drawing} what is seen of it, {@code panel} its studies, {@code web} the way to the browser. Uses
 * the studies, their words and the editing of files; commands use it.
 */
package rillwright.cli.page;
