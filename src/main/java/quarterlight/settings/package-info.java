/**
 * Answers: what does the program remember of its user between visits?
 * <p>Small files in the settings folder, written whole and moved into place; a damaged one costs a remark, never a visit. Uses the values and
 * {@code walk}. Read {@link quarterlight.settings.WalkFolder} first.
 */
package quarterlight.settings;
