/** The look of the window: palette, typeface, lines and layout. */
package quarterlight.ui.kit.look;
