/** How the program answers a word that it does not know. */
package rillwright.cli.wording;
