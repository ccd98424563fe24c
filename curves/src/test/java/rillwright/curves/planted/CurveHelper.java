package rillwright.curves.planted;

/** A name that says nothing. */
record CurveHelper() {}
