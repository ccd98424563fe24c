/**
 * Project files: read, changed, and made into networks. {@link rillwright.cli.file.ProjectReader}
 * is the way in. Uses its own sub-packages, which use nothing here; the catalogue and the solver.
 */
package rillwright.cli.file;
