/**
 * Answers: is there anything in pages that were made that should not be there, or that cannot be read? Looks at the files alone. Read
 * {@link quarterlight.page.check.PageCheck} first.
 */
package quarterlight.page.check;
