/**
 * What a change to a project is: what is done, what is set, what it costs. Uses {@code file},
 * {@code pricing} and {@code site}.
 */
package rillwright.cli.study.mend.change;
