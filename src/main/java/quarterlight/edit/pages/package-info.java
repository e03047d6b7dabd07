/** What is worked out of visits and the pages made of it. */
package quarterlight.edit.pages;
