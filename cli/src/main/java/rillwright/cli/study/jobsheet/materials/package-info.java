/**
 * What a job is built of: pipe by the length, and the pieces that stand in it. Uses {@code
 * catalogue}, {@code pricing} and the network; knows no words but names of the trade.
 */
package rillwright.cli.study.jobsheet.materials;
