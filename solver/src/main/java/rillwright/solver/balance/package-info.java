/**
 * The balance: flows and heads at which what enters each node leaves it and every link's law holds.
 *
 * <p>Nodes and links are numbered; nothing here knows what a pump or a pipe is. The laws are
 * strictly increasing, so the balanced flows are the one minimum of a strictly convex function of
 * the flows, the <em>content</em> (the sum of each law's integral). {@link
 * rillwright.solver.balance.Balancer} walks down it by Newton's method on flows and heads together.
 * Uses {@code law}, {@code balance.content} and {@code balance.linear}.
 */
package rillwright.solver.balance;
