/**
 * What is known of uncertain quantities once something that depends on them was read. Knows nothing
 * of networks: a model says what would be read with given values.
 */
package rillwright.solver.study.uncertainty.posterior;
