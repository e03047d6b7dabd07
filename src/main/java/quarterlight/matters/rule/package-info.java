/**
 * Answers: how severe is each kind of finding, and why?
 * <p>Uses the values only. Read {@link quarterlight.matters.rule.MatterRule} first: it is the table that
 * {@code docs/methods/what-matters.md} shows.
 */
package quarterlight.matters.rule;
