/** A clause of what was said, and what rules find in it. */
package quarterlight.words.clause;
