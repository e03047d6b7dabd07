/**
 * Answers: which lists does the program work by that a user can replace by one of their own, and what does such a list hold?
 * <p>Uses {@code table} and the values. Read {@link quarterlight.table.list.UserList} first.
 */
package quarterlight.table.list;
