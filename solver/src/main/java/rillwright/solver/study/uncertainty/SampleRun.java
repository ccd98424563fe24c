package rillwright.solver.study.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Steps;

/** Does many like pieces of work, in blocks that several threads share; the order stays theirs. */
final class SampleRun {
  private static final int LARGEST_BLOCK = 50;

  private final int pieces;
  private final int inABlock;
  private final Steps steps;

  private SampleRun(int pieces, int threads, Progress progress) {
    this.pieces = pieces;
    this.inABlock = Math.max(1, Math.min(LARGEST_BLOCK, pieces / (4 * threads)));
    this.steps = new Steps(progress, pieces);
  }

  /**
   * What comes out of each piece, in order.
   *
   * @param pieces how many there are, such as samples
   * @param work what to do with a piece's number, from 0; called by several threads at a time
   */
  static <T> List<T> of(int pieces, int threadCount, IntFunction<T> work, Progress progress) {
    SampleRun run = new SampleRun(pieces, threadCount, progress);
    ExecutorService threads = Executors.newFixedThreadPool(threadCount);
    try {
      List<T> all = new ArrayList<>();
      for (Future<List<T>> block : threads.invokeAll(run.blocks(work))) {
        all.addAll(block.get());
      }
      return all;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while sampling", e);
    } finally {
      threads.shutdownNow();
    }
  }

  private <T> List<Callable<List<T>>> blocks(IntFunction<T> work) {
    List<Callable<List<T>>> blocks = new ArrayList<>();
    for (int first = 0; first < pieces; first += inABlock) {
      int from = first;
      int to = Math.min(pieces, first + inABlock);
      blocks.add(() -> block(from, to, work));
    }
    return blocks;
  }

  private <T> List<T> block(int from, int to, IntFunction<T> work) {
    steps.done(0);
    List<T> results = new ArrayList<>(to - from);
    for (int piece = from; piece < to; piece++) {
      results.add(work.apply(piece));
    }
    steps.done(results.size());
    return results;
  }
}
