/**
 * What readings say of causes, one at a time or together: everything predicted at each size, the
 * likelihood of what was read integrated over the sizes, what a reading still to be taken is
 * expected to tell. Uses {@code cause}, {@code reading} and {@code job}.
 */
package rillwright.solver.study.diagnosis.evidence;
