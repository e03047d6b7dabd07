/**
 * Answers: how does a comparison of cars look on paper and in a browser?
 * <p>All words come from the sheet of the comparison; this adds pictures, drawings and layout. Read
 * {@link quarterlight.page.compare.ComparisonPages} first.
 */
package quarterlight.page.compare;
