package rillwright.solver.water.planted;

import rillwright.solver.network.Network;

/** A layer that looks up. */
public record WaterKnowsNetworks(Network network) {}
