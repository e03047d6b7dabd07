/** What is still open in a visit, one doubt after the other. Read {@link quarterlight.ui.doubt.Doubts} first. Uses values and findings alone. */
package quarterlight.ui.doubt;
