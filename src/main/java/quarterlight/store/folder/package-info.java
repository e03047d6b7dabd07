/**
 * The folder of a visit: what lies in it, who edits it, and how an older one is upgraded.
 *
 * <p>Decided in docs/decisions: 0264.
 */
package quarterlight.store.folder;
