/**
 * The symmetric positive definite system of one Newton step: elimination order, factor, solution.
 * Uses EJML alone.
 */
package rillwright.solver.balance.linear;
