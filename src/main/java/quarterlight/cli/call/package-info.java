/** What a verb is, and what every verb needs of its call and surroundings. */
package quarterlight.cli.call;
