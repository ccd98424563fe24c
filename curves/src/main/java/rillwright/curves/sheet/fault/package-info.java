/** What can be wrong with a data sheet: where, what, and what would be right. */
package rillwright.curves.sheet.fault;
