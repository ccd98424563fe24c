/** Text of a user made fit to show, what may have been meant, and lists in a sentence. */
package rillwright.curves.wording;
