/**
 * How pages become files: templates, typeface, PDF, and pictures of pages.
 *
 * <p>Decided in docs/decisions: 0071, 0110.
 */
package quarterlight.page.print;
