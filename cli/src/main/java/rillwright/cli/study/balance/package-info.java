/** How to set valves. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.balance;
