/** The chance that it works. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.odds;
