/** Verbs that tell what is worked out of a visit. */
package quarterlight.cli.analysis;
