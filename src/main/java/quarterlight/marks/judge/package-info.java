/** Marks and features judged by the build of the car. */
package quarterlight.marks.judge;
