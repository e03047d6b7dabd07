/** Starts the program: {@link quarterlight.Main} is the only place that wires objects together. */
package quarterlight;
