package rillwright.solver.balance.planted;

import rillwright.solver.law.Bore;

/** A balance that knows more of laws than their contract. */
public record BalanceKnowsBores(Bore bore) {}
