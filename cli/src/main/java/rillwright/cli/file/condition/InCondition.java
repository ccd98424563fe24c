package rillwright.cli.file.condition;

import rillwright.cli.file.Project;

/**
 * A project in a condition.
 *
 * @param condition which
 * @param project as it is then
 */
public record InCondition(Condition condition, Project project) {}
