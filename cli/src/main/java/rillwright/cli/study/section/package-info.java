/**
 * The long section along the water's ways: what it meets in order, at which elevation and head.
 * Uses {@code file} and the solver; knows no words.
 */
package rillwright.cli.study.section;
