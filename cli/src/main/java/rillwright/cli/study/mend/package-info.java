/**
 * What would mend a job: changes are put into it one by one, balanced and judged. Uses {@code
 * change}, {@code kind} and the solver; knows no words.
 */
package rillwright.cli.study.mend;
