/** What the report says, chapter by chapter. */
package quarterlight.page.report.text;
