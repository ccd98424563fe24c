/**
 * Water in open channels: cross-sections, what a bed does to the speed, normal and critical depth.
 * SI; not head laws of the balance. Uses nothing.
 */
package rillwright.solver.law.channel;
