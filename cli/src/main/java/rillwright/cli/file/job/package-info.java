/**
 * For whom and where a job is done, and what is noted and photographed at its points and lines.
 * Uses {@code field}, {@code tree} and {@code fault}.
 */
package rillwright.cli.file.job;
