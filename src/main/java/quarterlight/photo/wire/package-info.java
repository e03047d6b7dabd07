/** Messages between the program and its workers. */
package quarterlight.photo.wire;
