/**
 * Answers: what does a document say of itself, and how does a page of it look?
 * <p>Uses PDFBox; nothing in a document is run, and nothing outside it is read. For workers only. Read
 * {@link quarterlight.photo.paper.PaperFile} first.
 *
 * <p>Decided in docs/decisions: 0171.
 */
package quarterlight.photo.paper;
