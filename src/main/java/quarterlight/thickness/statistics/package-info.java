/** Statistics of samples. */
package quarterlight.thickness.statistics;
