/**
 * From readings to causes by Bayes' rule: how likely each cause and pair of causes is, and what to
 * read next. Uses {@code evidence} and {@code pair}.
 */
package rillwright.solver.study.diagnosis.inference;
