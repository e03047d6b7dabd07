/**
 * Answers: what does the first page for the buyer say, and how does each thing that matters look in full?
 * <p>Uses the matters, the findings and the pictures as a buyer may see them. Read {@link quarterlight.page.brief.BriefPage} first; the
 * rules of its words stand in {@code docs/methods/brief.md}.
 *
 * <p>Decided in docs/decisions: 0273.
 */
package quarterlight.page.brief;
