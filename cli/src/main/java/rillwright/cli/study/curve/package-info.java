/** The curves at a pump's place. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.curve;
