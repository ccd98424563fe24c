package rillwright.cli.file.visit;

import rillwright.cli.file.fault.Place;
import rillwright.solver.study.diagnosis.reading.Reading;

/**
 * A reading and where it is written.
 *
 * @param reading what was read
 * @param place where it is written
 */
public record PlacedReading(Reading reading, Place place) {}
