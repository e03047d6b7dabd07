/** Fields and tables that several stations use. */
package quarterlight.ui.kit.widget;
