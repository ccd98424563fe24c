package rillwright.cli.page.view;

/**
 * A value of a job as it is written.
 *
 * @param address of it, as {@code --set} takes it
 * @param field its name within what it belongs to, as in the schema: {@code rating.flow}
 * @param text as written
 */
record Value(String address, String field, String text) {}
