/**
 * A network as the crew lead draws it: points where water has a level or pipes meet, and lines of
 * parts between them.
 *
 * <p>Everything here is immutable and SI. A part knows its head law; a new kind of part is one law
 * with its source and test and one record here. This package uses {@code law} and {@code water}.
 */
package rillwright.solver.network;
