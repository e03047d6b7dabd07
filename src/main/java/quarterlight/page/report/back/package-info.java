/**
 * What stands at the end of a report for those who look closer: the words it uses and the photos with their hashes. Texts only; read
 * {@link quarterlight.page.report.back.PhotoIndex} first.
 */
package quarterlight.page.report.back;
