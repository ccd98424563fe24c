/** How streams run and what they do to levels. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.stream;
