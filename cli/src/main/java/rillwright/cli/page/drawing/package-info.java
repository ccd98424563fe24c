/**
 * The long section and the operating point for a screen: the contents of their pictures laid out
 * for the width that is there, to be touched. Coloured by the page's style.
 */
package rillwright.cli.page.drawing;
