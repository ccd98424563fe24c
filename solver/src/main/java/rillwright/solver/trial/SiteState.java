package rillwright.solver.trial;

import rillwright.solver.network.Network;

/**
 * A network in a condition of its site.
 *
 * @param condition its name: "autumn"
 * @param network as it is then, of the same lines and parts
 */
public record SiteState(String condition, Network network) {}
