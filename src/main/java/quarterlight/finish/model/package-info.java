/**
 * The second model of finish histories: judged numbers, stories of a panel, and the sums over them.
 * <p>Knows nothing of visits: panels in, chances out. Read {@link quarterlight.finish.model.CarPosterior} first; the
 * method is in docs/methods/finish-history.md.
 *
 * <p>Decided in docs/decisions: 0267, 0293.
 */
package quarterlight.finish.model;
