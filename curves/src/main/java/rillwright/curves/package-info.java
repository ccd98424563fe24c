/** Pump and system curves: data sheets read and checked, curves traced, pictures drawn. */
package rillwright.curves;
