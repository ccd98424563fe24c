package rillwright.solver.planted;

import java.nio.file.Path;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ejml.data.DMatrixSparseCSC;
import org.hipparchus.ode.ODEState;
import org.jgrapht.graph.DefaultEdge;
import rillwright.curves.planted.Above;

/** A file, a matrix, a graph, a distribution, an integrator and a module above, in one place. */
record KnowsEverything(
    Path file,
    DMatrixSparseCSC matrix,
    DefaultEdge edge,
    NormalDistribution normal,
    ODEState state,
    Above above) {}
