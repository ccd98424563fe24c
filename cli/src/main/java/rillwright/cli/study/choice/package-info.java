/** Which pump, which size of pipe. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.choice;
