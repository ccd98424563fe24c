/**
 * The job sheet: what the other studies say of a project, put together, with its materials and the
 * readings of its last day. Uses those studies; knows no words.
 */
package rillwright.cli.study.jobsheet;
