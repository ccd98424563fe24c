/**
 * JSON texts and their schema from one description. A {@link rillwright.cli.json.Shape} names each
 * member of an object with its unit and meaning; from it the text is written and the schema made.
 * Alone in knowing the generator of Jackson.
 */
package rillwright.cli.json;
