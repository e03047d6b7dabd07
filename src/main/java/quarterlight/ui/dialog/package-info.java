/** Dialogs and windows that stand apart from the stations. */
package quarterlight.ui.dialog;
