/** What commands print: tables, numbers and words for people, and parts of JSON. */
package quarterlight.cli.text;
