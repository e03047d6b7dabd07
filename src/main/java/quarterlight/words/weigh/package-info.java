/** How likely a draft is right, and what a confirmed or dropped one teaches; read {@link quarterlight.words.weigh.Weights} first. */
package quarterlight.words.weigh;
