/**
 * What a crew would read with the network brought into another state for the reading: its pumps
 * off, or a valve shut. Uses {@code steady} and {@code network}.
 */
package rillwright.solver.reading;
