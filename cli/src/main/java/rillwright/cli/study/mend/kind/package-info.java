/**
 * Kinds of changes that may be tried at a project, each where it can help, as any command takes it.
 * Uses {@code file}, {@code change}, {@code site} and the solver.
 */
package rillwright.cli.study.mend.kind;
