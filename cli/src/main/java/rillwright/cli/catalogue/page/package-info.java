/**
 * The catalogue as it is shown: as text for people, as JSON and CSV for programs. Uses the
 * catalogue and Jackson's generator.
 */
package rillwright.cli.catalogue.page;
