/** Photos and films on their way into a visit. */
package quarterlight.edit.intake;
