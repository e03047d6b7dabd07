/** How pages become files: templates, typeface, PDF, and pictures of pages. */
package quarterlight.page.print;
