/**
 * Studies of a project that anyone can ask: a request and a project in, an answer out. No paths, no
 * words, no terminal; a request in {@code condition} asks another one in each condition of the
 * site. Uses {@code file}, {@code curves} and the solver.
 */
package rillwright.cli.study;
