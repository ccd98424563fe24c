/**
 * What would mend a job: changes that are put into it one by one and balanced. Uses {@code file},
 * {@code pricing}, {@code study.choice} and the solver; knows no words.
 */
package rillwright.cli.study.mend;
