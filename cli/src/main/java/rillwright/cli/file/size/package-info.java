/**
 * Sizes that the pipe of a line can have, and the changes that give it one. Uses {@code tree},
 * {@code quantity}, {@code fault}, the catalogue and the wording of messages.
 */
package rillwright.cli.file.size;
