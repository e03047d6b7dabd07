/**
 * Answers: how do readings come in from a table of some other program?
 * <p>Its columns and zones are named once and remembered; readings with times and no zones are placed by the photos around them. Uses ui.kit.
 * Read {@link quarterlight.ui.tables.ForeignTables} first.
 */
package quarterlight.ui.tables;
