/**
 * Answers: what does the buyer get to read? The diagram page, the report, the comparison, as SVG, PDF and HTML.
 * <p>Uses the findings, the body diagram and the libraries for SVG, templates and PDF. Read {@code VisitPages} first.
 *
 * <p>Decided in docs/decisions: 0196.
 */
package quarterlight.page;
