/** The causes that are known, one class a kind, and the table of them all. */
package rillwright.solver.study.diagnosis.cause.kind;
