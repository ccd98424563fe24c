/** What a pump must make. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.duty;
