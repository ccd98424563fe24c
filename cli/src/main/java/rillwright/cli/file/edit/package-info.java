/**
 * Edits the text of a project: a tree is changed in memory, and {@code Splice} writes what is new
 * into the text, so that all that is untouched stays byte for byte. Uses {@code tree}, {@code
 * change} and {@code fault}.
 */
package rillwright.cli.file.edit;
