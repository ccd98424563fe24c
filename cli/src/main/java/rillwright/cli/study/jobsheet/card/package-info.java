/**
 * What a crew reads on the day on which the water is started, and what it should find. Uses the
 * solver's readings; knows no words.
 */
package rillwright.cli.study.jobsheet.card;
