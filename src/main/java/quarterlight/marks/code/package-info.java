/**
 * Answers: what dates can the text of one mark mean, and what does a published rule say of it?
 * <p>Knows no visit and no car. Read {@link quarterlight.marks.code.DatePattern} first.
 *
 * <p>Decided in docs/decisions: 0060.
 */
package quarterlight.marks.code;
