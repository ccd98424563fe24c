/**
 * Water on its way back: reaches, pools and drops, what they hold, what that does to the pond's
 * level, and starting and stopping. Uses {@code steady}, {@code network}, {@code finding} and
 * {@code law.channel}.
 */
package rillwright.solver.stream;
