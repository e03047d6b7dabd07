/**
 * Makes the demo data: draws the photos of two invented cars and writes the tables that belong to them.
 * <p>Nothing here is part of the program. Read {@code MakeDemoData} first, then {@code Relief} for how a picture is drawn.
 */
package quarterlight.demo;
