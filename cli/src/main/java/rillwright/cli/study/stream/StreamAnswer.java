package rillwright.cli.study.stream;

import java.util.Optional;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.cli.study.RunningFigures;
import rillwright.solver.stream.StreamBudget;
import rillwright.solver.stream.time.TimeCourse;

/**
 * Streams and levels of a project.
 *
 * @param job that it is about
 * @param budget where the water is
 * @param takes what it takes to run
 * @param course start and stop in time, where it was asked for
 */
public record StreamAnswer(
    Job job, StreamBudget budget, RunningFigures takes, Optional<TimeCourse> course)
    implements Answer {}
