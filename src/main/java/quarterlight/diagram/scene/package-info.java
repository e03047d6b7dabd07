/** A diagram laid out with everything on it, and its two renderers. */
package quarterlight.diagram.scene;
