/**
 * Answers: what does the report say, zone by zone, with which photos and which figures? The content is made once and written
 * as PDF and as one HTML file.
 * <p>Uses the findings and the page package. Read {@link quarterlight.page.report.ReportPages} first.
 *
 * <p>Decided in docs/decisions: 0070, 0072, 0197, 0213, 0272.
 */
package quarterlight.page.report;
