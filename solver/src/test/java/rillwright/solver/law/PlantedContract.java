package rillwright.solver.law;

import rillwright.solver.law.minor.VelocityHeadLoss;

/** A contract of laws that knows one of them. */
record PlantedContract(VelocityHeadLoss loss) {}
