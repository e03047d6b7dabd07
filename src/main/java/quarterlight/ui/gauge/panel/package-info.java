/** The zone in hand from its edge, and panels set against one another. */
package quarterlight.ui.gauge.panel;
