/**
 * Answers: what does the window of a visit look like, and what can be done in it?
 * <p>Uses {@link quarterlight.edit}; one screen per package below, each a model, a panel and its actions; {@code ui.kit} and
 * {@code ui.diagram} serve all screens. Read {@code MainWindow} first.
 *
 * <p>Decided in docs/decisions: 0095, 0118, 0285.
 */
package quarterlight.ui;
