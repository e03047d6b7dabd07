/**
 * Answers: how is a visit packed into one file that proves itself, and how is such a file checked and opened again?
 * <p>A bag (RFC 8493, "The BagIt File Packaging Format (V1.0)") in a zip file. Uses tables and pages. Read {@link
 * quarterlight.archive.BagWriter} first, then {@link quarterlight.archive.BagFile}.
 *
 * <p>Decided in docs/decisions: 0065, 0066, 0067, 0068.
 */
package quarterlight.archive;
