/** Which pump of a list meets the targets: all of them tried and ranked. Uses {@code trial}. */
package rillwright.solver.study.pumpchoice;
