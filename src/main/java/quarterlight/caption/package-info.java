/**
 * Reads files of timed words: WebVTT, SRT, lines with a time, and the JSON of recognizers. Read {@link quarterlight.caption.CaptionFile} first.
 *
 * <p>Decided in docs/decisions: 0147.
 */
package quarterlight.caption;
