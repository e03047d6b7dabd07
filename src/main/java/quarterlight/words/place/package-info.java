/** Where something is: part, side and end, carried from clause to clause; read {@link quarterlight.words.place.Scene} first. */
package quarterlight.words.place;
