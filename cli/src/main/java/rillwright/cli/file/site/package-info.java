/**
 * What a project file says about the whole job: water, site, running, prices. Uses {@code field}
 * and what lies below it, and the solver's water.
 */
package rillwright.cli.file.site;
