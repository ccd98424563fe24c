package rillwright.solver.study.planted;

import rillwright.solver.study.duty.Duty;

/** A study that knows another. */
public record StudyKnowsStudy(Duty duty) {}
