package rillwright.cli.bench;

import java.util.Map;
import java.util.TreeMap;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.ojalgo.matrix.decomposition.SparseQDLDL;
import org.ojalgo.matrix.store.R064CSC;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The same matrices as {@link FactorBenchmark} by libraries that factor any sparse matrix. */
@State(Scope.Benchmark)
public class LibraryBenchmark {
  @Param({
    "TREE 12", "TREE 100", "TREE 1000",
    "LOOPS 12", "LOOPS 100", "LOOPS 1000",
    "GRID 12", "GRID 100", "GRID 1000"
  })
  public String network;

  private StepMatrix step;
  private R064CSC upper;
  private SparseQDLDL plain;
  private SparseQDLDL.EliminationTree tree;
  private DMatrixSparseCSC whole;
  private LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> unordered;

  /** The matrix as each library takes it. */
  @Setup
  public void prepare() {
    step = StepMatrix.of(network);
    int size = step.size();
    whole = summed(size, step.from(), step.to());
    upper = new R064CSC(size, size, whole.nz_values, whole.nz_rows, whole.col_idx);
    plain = new SparseQDLDL();
    tree = plain.computeEliminationTree(upper);
    unordered = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
  }

  /** The upper triangle, each place once. */
  private DMatrixSparseCSC summed(int size, int[] from, int[] to) {
    Map<Long, Double> entries = new TreeMap<>();
    for (int i = 0; i < size; i++) {
      entries.merge((long) i * size + i, StepMatrix.ANCHOR, Double::sum);
    }
    for (int k = 0; k < from.length; k++) {
      double conductance = step.conductance()[k];
      entries.merge((long) from[k] * size + from[k], conductance, Double::sum);
      entries.merge((long) to[k] * size + to[k], conductance, Double::sum);
      long place = (long) Math.max(from[k], to[k]) * size + Math.min(from[k], to[k]);
      entries.merge(place, -conductance, Double::sum);
    }
    DMatrixSparseTriplet triplet = new DMatrixSparseTriplet(size, size, entries.size());
    entries.forEach((at, value) -> triplet.addItem((int) (at % size), (int) (at / size), value));
    DMatrixSparseCSC matrix = DConvertMatrixStruct.convert(triplet, (DMatrixSparseCSC) null);
    matrix.sortIndices(null);
    return matrix;
  }

  /** ojAlgo's sparse LDL with its elimination tree kept, in the order of the file. */
  @Benchmark
  public double[] ojAlgo() {
    plain.factor(upper, tree);
    return plain.solve(step.rightHandSide().clone());
  }

  /** EJML's sparse Cholesky as it comes, in the order of the file. */
  @Benchmark
  public DMatrixRMaj ejml() {
    DMatrixRMaj answer = new DMatrixRMaj(step.size(), 1);
    unordered.setA(whole);
    unordered.solve(new DMatrixRMaj(step.size(), 1, true, step.rightHandSide()), answer);
    return answer;
  }
}
