package rillwright.curves.unit.planted;

import java.awt.Color;

/** A unit that knows a colour. */
public record UnitThatDraws(Color color) {}
