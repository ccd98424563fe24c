/** Why a fall is weak, and how good that answer is on simulated calls. */
package rillwright.cli.command.weak;
