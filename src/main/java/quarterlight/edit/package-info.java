/**
 * Answers: what can a user do to a visit? One class per family of edits; each call is one step that can be undone, the same from a
 * window and from a command.
 * <p>Uses adapters, science and values; knows neither windows nor commands.
 */
package quarterlight.edit;
