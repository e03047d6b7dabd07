/** The folder of a visit: what lies in it, who edits it, and how an older one is upgraded. */
package quarterlight.store.folder;
