/** Which pump of a list does it: all of them tried and ranked. Uses {@code trial}. */
package rillwright.solver.study.pumpchoice;
