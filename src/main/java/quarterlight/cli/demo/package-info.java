/** The demo visits, built from what they brought home. */
package quarterlight.cli.demo;
