/**
 * The job sheet as pages: for everybody, for the crew, for the customer, for the lid of the pump
 * and the valve box; its lists as files. Uses the pages of the studies that it puts together.
 */
package rillwright.cli.report.text.jobsheet;
