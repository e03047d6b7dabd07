/** Verbs that make a visit and take evidence in. */
package quarterlight.cli.evidence;
