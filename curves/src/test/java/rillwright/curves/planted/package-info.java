/** Small classes that each break a rule of the architecture, so that the rules are seen to see. */
package rillwright.curves.planted;
