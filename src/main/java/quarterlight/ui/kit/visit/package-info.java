/** The visit at hand as all screens see it, and the stations of the job. */
package quarterlight.ui.kit.visit;
