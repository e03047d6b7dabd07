/** What was tried or looked for, and what came of it. */
package quarterlight.visit.trial;
