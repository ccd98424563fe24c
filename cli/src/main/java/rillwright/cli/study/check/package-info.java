/** Whether a project is right. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.check;
