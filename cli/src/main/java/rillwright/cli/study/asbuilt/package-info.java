/** What readings say of what was not known. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.asbuilt;
