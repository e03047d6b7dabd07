/** The pictures of the report as the buyer may see them. */
package quarterlight.page.report.picture;
