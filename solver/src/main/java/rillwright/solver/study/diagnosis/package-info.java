/**
 * Why a fall is weak: which faults explain what was read, how likely each is, what to read next.
 * The packages below hold the job with changes made to it ({@code job}), what can be read ({@code
 * reading}), the causes ({@code cause}), the inference ({@code inference}) and its trial on
 * simulated calls ({@code trial}).
 */
package rillwright.solver.study.diagnosis;
