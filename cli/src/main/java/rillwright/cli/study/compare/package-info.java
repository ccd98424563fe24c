/** Two projects side by side. Uses {@code file} and the solved projects; knows no words. */
package rillwright.cli.study.compare;
