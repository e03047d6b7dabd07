/** Readings grouped into the places they were taken at. */
package quarterlight.thickness.spot;
