/**
 * Answers: what can a user do with the words of a spoken walk? Take them in, hear drafts of evidence in them, keep some, and hear what they leave open.
 * <p>Uses {@code edit} and what edits use. Read {@link quarterlight.edit.spoken.VisitWalk} first.
 *
 * <p>Decided in docs/decisions: 0189, 0228, 0232.
 */
package quarterlight.edit.spoken;
