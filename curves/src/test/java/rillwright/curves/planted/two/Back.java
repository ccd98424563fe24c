package rillwright.curves.planted.two;

import rillwright.curves.planted.one.There;

/** The other half of it. */
public record Back(There there) {}
