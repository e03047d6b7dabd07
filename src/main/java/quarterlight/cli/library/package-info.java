/** Verbs for many visits at once. */
package quarterlight.cli.library;
