/** A pump's data sheet by itself, without a project: its best point and its current. No words. */
package rillwright.cli.study.sheet;
