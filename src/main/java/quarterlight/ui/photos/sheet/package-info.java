/**
 * Answers: how do thousands of photos lie on one sheet, and what do mouse and keys do there?
 * <p>Read {@link quarterlight.ui.photos.sheet.ContactSheet} first.
 */
package quarterlight.ui.photos.sheet;
