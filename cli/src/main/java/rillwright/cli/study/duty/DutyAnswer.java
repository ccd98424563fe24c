package rillwright.cli.study.duty;

import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.duty.Duty;

/**
 * The duty of a pump in a project.
 *
 * @param job that it is about
 * @param network of the project
 * @param place where the pump stands
 * @param duty what it must make
 */
public record DutyAnswer(Job job, Network network, PumpPlace place, Duty duty) implements Answer {}
