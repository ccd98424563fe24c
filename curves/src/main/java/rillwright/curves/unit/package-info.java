/** Units as people write them, and what they are in SI. Uses nothing else of the project. */
package rillwright.curves.unit;
