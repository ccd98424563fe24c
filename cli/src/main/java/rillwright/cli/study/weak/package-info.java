/** Why a fall is weak. Uses {@code file} and the solver; knows no words. */
package rillwright.cli.study.weak;
