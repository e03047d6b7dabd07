/** What can have happened to a finish, and how likely each history is. */
package quarterlight.finish.history;
