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

/** Works out all samples, in blocks that several threads share; the order stays theirs. */
final class SampleRun {
  private static final int BLOCK = 50;

  private final int samples;
  private final Steps steps;

  private SampleRun(int samples, Progress progress) {
    this.samples = samples;
    this.steps = new Steps(progress, samples);
  }

  /**
   * What comes out of each sample, in order.
   *
   * @param work what to do with a sample's number, from 0; called by several threads at a time
   */
  static <T> List<T> of(SamplingPlan plan, IntFunction<T> work, Progress progress) {
    SampleRun run = new SampleRun(plan.samples(), progress);
    ExecutorService threads = Executors.newFixedThreadPool(plan.threads());
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
    for (int first = 0; first < samples; first += BLOCK) {
      int from = first;
      int to = Math.min(samples, first + BLOCK);
      blocks.add(() -> block(from, to, work));
    }
    return blocks;
  }

  private <T> List<T> block(int from, int to, IntFunction<T> work) {
    steps.done(0);
    List<T> results = new ArrayList<>(to - from);
    for (int sample = from; sample < to; sample++) {
      results.add(work.apply(sample));
    }
    steps.done(results.size());
    return results;
  }
}
