/**
 * Makes the body diagrams of the program from drawing data that a person can change.
 *
 * <p>Input: {@code diagrams/curves/*.draw}, a small language of numbers, curves and areas (described in
 * {@code docs/diagrams.md}). Output: {@code diagrams/<style>.svg}. Not part of the program: it is run by whoever changes
 * a drawing, and a test holds the committed files to what it makes. Read {@link quarterlight.draw.DrawingScript} first.
 */
package quarterlight.draw;
