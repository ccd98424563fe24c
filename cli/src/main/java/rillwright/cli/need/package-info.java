/**
 * What commands and the page need of a project before they ask a study, and says where it is
 * missing.
 */
package rillwright.cli.need;
