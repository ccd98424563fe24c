package rillwright.cli.report;

import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.duty.Duty;

/**
 * The duty of a pump in a project.
 *
 * @param title of the job, as written
 * @param units to show it in
 * @param network of the project
 * @param place where the pump stands
 * @param duty what it must make
 */
public record DutyAnswer(
    String title, ShownUnits units, Network network, PumpPlace place, Duty duty) {}
