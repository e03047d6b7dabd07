/** What the program says of itself: its version and build, and the licenses of what it is shipped with. */
package quarterlight.about;
