package rillwright.solver.law.planted;

import rillwright.solver.network.Network;

/** A law that knows in what it stands. */
public record LawKnowsParts(Network network) {}
