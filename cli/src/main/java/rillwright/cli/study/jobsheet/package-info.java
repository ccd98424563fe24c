/**
 * The job sheet: what the other studies say of a project, put together, with its materials and the
 * readings at its start-up. Uses those studies; knows no words.
 */
package rillwright.cli.study.jobsheet;
