/** Water: density, viscosity and vapour pressure by temperature, and the air above it. */
package rillwright.solver.water;
