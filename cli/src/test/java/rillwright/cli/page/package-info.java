/** The live page without a browser: who is let in, what is written, how fast it redraws. */
package rillwright.cli.page;
