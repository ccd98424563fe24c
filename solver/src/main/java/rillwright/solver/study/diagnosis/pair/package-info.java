/** Two causes at work at once: screened, fitted, computed through. Uses {@code evidence}. */
package rillwright.solver.study.diagnosis.pair;
