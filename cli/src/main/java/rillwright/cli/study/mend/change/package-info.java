/**
 * Changes that may be tried at a project: each class of them where it can help, as any command
 * takes it. Uses {@code file}, {@code pricing}, {@code study.choice} and the solver.
 */
package rillwright.cli.study.mend.change;
