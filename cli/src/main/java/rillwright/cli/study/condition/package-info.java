/** Studies in several conditions of the site. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.condition;
