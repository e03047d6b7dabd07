/**
 * Answers: what does the program remember of its user between visits?
 * <p>Small files in the settings folder, written whole and moved into place; a damaged one costs a remark, never a visit. Uses the values and
 * {@code walk}. Read {@link quarterlight.settings.WalkFolder} first.
 *
 * <p>Decided in docs/decisions: 0059, 0106, 0121, 0122.
 */
package quarterlight.settings;
