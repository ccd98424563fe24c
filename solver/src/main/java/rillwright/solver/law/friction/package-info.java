/** Friction of full circular pipes: Darcy–Weisbach with its friction factors, Hazen–Williams. */
package rillwright.solver.law.friction;
