/**
 * From readings to causes by Bayes' rule: every cause swept over its sizes once for a job, the
 * likelihood of what was read integrated over the sizes, and how much each reading that is still to
 * be taken would tell. Uses {@code cause}, {@code reading} and {@code job}.
 */
package rillwright.solver.study.diagnosis.inference;
