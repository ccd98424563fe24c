/** What flows where. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.solve;
