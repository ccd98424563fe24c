package rillwright.cli.file.tree;

import rillwright.cli.file.fault.Place;

/**
 * A name and what belongs to it.
 *
 * @param key the name, as written
 * @param keyPlace where the name begins
 * @param value what belongs to it
 */
public record Entry(String key, Place keyPlace, Node value) {}
