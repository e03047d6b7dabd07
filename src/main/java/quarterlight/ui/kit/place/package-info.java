/** Where in the window a change of the visit is to be seen. Read {@link quarterlight.ui.kit.place.ChangedRows} first. Uses values alone. */
package quarterlight.ui.kit.place;
