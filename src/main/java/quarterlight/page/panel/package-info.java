/**
 * Answers: how does a panel look from its edge, with the coating that the gauge found at its points? And where do its spots lie on the
 * car's scale? One drawing of each for window and pages.
 * <p>Uses the outlines and the typeface of the diagram. Read {@link quarterlight.page.panel.PanelProfile} first.
 *
 * <p>Decided in docs/decisions: 0100.
 */
package quarterlight.page.panel;
