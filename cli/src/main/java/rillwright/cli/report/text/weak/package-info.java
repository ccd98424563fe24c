/** Why a fall is weak, for people. Uses {@code report.text} and the solver's diagnosis. */
package rillwright.cli.report.text.weak;
