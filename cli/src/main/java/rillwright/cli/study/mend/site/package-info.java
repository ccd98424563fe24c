/** A site as it stands, what it needs, and what a changed state is to these needs. */
package rillwright.cli.study.mend.site;
