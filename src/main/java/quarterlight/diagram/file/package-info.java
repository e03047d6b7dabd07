/** Diagram files: read, checked, refused. */
package quarterlight.diagram.file;
