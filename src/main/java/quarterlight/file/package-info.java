/**
 * Writing files and folders so that they appear whole and last through a power cut, and the shapes of CSV that are read. The one home for it:
 * every package that writes or reads files may use this one, which uses no other. Read {@link quarterlight.file.DurableFiles} first.
 *
 * <p>Decided in docs/decisions: 0151, 0156.
 */
package quarterlight.file;
