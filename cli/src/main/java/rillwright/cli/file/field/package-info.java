/**
 * The fields of a map in a project file: read as quantities, words, counts and maps, with what is
 * wrong noted at its place. Uses {@code tree}, {@code quantity}, {@code fault}, {@code
 * cli.wording}.
 */
package rillwright.cli.file.field;
