/**
 * The causes of a weak fall: each a small class that says where in a job it can sit, how large it
 * can be, and what it makes of the job. What was seen and reported shifts how likely they are. Uses
 * {@code job} and {@code network}.
 */
package rillwright.solver.study.diagnosis.cause;
