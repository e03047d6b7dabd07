/**
 * What is worked out of visits and the pages made of it.
 *
 * <p>Decided in docs/decisions: 0218.
 */
package quarterlight.edit.pages;
