/** The numbers of the finish model and what they range over, each with its source. */
package quarterlight.finish.number;
